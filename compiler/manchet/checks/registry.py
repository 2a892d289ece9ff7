"""The checks made of a formula; how their reports are silenced by `allow`.

A check stands in the file of its name (`salt-low` in `composition/salt_low.py`), beside its case, and says itself what
it is about; the index is made from that. It is only loaded when the formula has one of the things it is about: a start
of the command is a tenth of a second, and a plain loaf has no use for the lye.
"""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Iterator
from functools import cache
from importlib import import_module

from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.checks.index import CHECKS
from manchet.checks.traits import traits_of
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.fixes import exchange_of, without_line
from manchet.diagnostics.reports import remarks_of, report
from manchet.formula.model import Formula

Check = Callable[[Work], Iterator[Diagnostic]]

NAMES = frozenset(CHECKS)

OF_SIZE = frozenset(name for name, listed in CHECKS.items() if listed.of_size)
"""Checks of what the amount asks of the house: made again for another amount than the file's."""


@cache
def check_called(name: str) -> Check:
    """The check that makes the report of that name."""
    found: Check = import_module(f"manchet.checks.{CHECKS[name].topic}.{name.replace('-', '_')}").check
    return found


def _reports(work: Work, names: Iterable[str]) -> Iterator[Diagnostic]:
    """What the checks of these names say, those passed over that are about nothing the formula has."""
    traits = traits_of(work)
    for name in names:
        about = CHECKS[name].about
        if not about or not traits.isdisjoint(about):
            yield from check_called(name)(work)


AT_THE_SCALE = frozenset({"too-small-to-weigh", "moved-by-rounding"})
"""What the sheet says of weights that the kitchen's scales cannot show: said here in the same words."""


def _at_the_scale(work: Work) -> tuple[Diagnostic, ...]:
    """What cannot be weighed; and remarks on scales that the kitchen names. Of a scale that nobody named only the sheet
    speaks, which says that it assumes one."""
    found = weighings(work).diagnostics
    return tuple(one for one in found if work.kitchen.scales or one.severity is Severity.ERROR)


def check_size(work: Work) -> tuple[Diagnostic, ...]:
    """What the checks `OF_SIZE` say of the subject's batch, but for what is allowed."""
    quiet = {allowed.name for allowed in work.formula.allowed} | set(work.kitchen.always_allow)
    return tuple(_reports(work, sorted(OF_SIZE - quiet)))


def check(work: Work) -> tuple[Diagnostic, ...]:
    """The reports of all checks that the formula, its stages and the kitchen do not allow, but for those that another of
    them explains; and each `allow` of one of these checks that allowed nothing. An error cannot be allowed.
    """
    reports = (*_reports(work, CHECKS), *_at_the_scale(work))
    quiet = {allowed.name for allowed in work.formula.allowed} | set(work.kitchen.always_allow)
    heard = {report.name for report in reports if report.severity is not Severity.ERROR}
    explained = {name for cause in (heard - quiet) & NAMES for name in CHECKS[cause].explains}
    left = (
        report
        for report in reports
        if report.severity is Severity.ERROR or (report.name not in quiet and report.name not in explained)
    )
    return (*left, *_allowed_in_vain(work.formula, heard))


def _allowed_in_vain(formula: Formula, heard: Container[str]) -> Iterator[Diagnostic]:
    """Each `allow` of what cannot be allowed here, and of what was not `heard`."""
    for allowed in formula.allowed:
        name = allowed.name
        if name in remarks_of("kitchen"):
            message = f"{name} is a remark on the kitchen, and none on {formula.name}"
            help = f"write `always allow {name} because …` in the kitchen"
            yield report("unknown-allow", allowed.place, message, help)
        elif name not in NAMES and name not in remarks_of("batch", "formula", "larder"):
            message = f"there is no remark called {name}; an error cannot be allowed"
            near = _near(name)
            help = f"did you mean `{near}`?" if near else "copy the name from the report you mean"
            fixes = exchange_of(allowed.place, name, near) if near else ()
            yield report("unknown-allow", allowed.place, message, help, fixes=fixes)
        if name in NAMES and name not in heard:
            message = f"`allow {name}` allows nothing: {formula.name} has no such report"
            help = "take out the line, or check the name"
            fixes = (without_line(allowed.place, "leave out this line"),)
            yield report("allow-unused", allowed.place, message, help, fixes=fixes)


def _near(name: str) -> str | None:
    from manchet.diagnostics.suggest import nearest

    return nearest(name, NAMES)
