"""The cautions of a formula as reports: for who reads the file. The sheet has them in full, at their step.

What the file keeps to is not told, since its sheet asks for the reading; nor what hangs on the wall of the house.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.caution import Caution
from manchet.cautions.phrase import Measured, Wording
from manchet.cautions.registry import cautions_of_formula
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import caution_report
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import decimal, telling
from manchet.quantities.units import in_fahrenheit

_UNITS = {"percent": "%", "days": " d"}


def cautions_told(work: Work) -> Iterator[Diagnostic]:
    """A report for each, of its own kind: no `allow` takes it away, and none of them is a mistake of the file."""
    for one in cautions_of_formula(work):
        if one.level != "limit":
            yield _told(one, work)


def _told(one: Caution, work: Work) -> Diagnostic:
    hazard, kitchen = one.hazard, work.kitchen
    name = hazard.catchword[:1].lower() + hazard.catchword[1:]
    why = _text(one.why, kitchen)
    limit = _text(one.said(False).limit, kitchen)
    message = f"{name}: {why}" if why else name
    helps = one.level == "warning" and limit
    return caution_report(one.name, place_of(one, work.formula), message, limit if helps else "")


def place_of(one: Caution, formula: Formula) -> Place:
    """Where the file says what causes it: the line of the step, of the stage, or of a preparation's keeping."""
    stage = formula.stage(one.at.stage)
    if stage is None:
        return formula.place
    if one.at.step is None:
        return stage.place
    steps = stage.steps if one.at.branch is None else formula.branches[one.at.branch].steps
    if one.at.step < len(steps):
        return steps[one.at.step].place
    return formula.good_for.place if formula.good_for is not None else formula.place


def _text(wording: Wording, kitchen: Kitchen) -> str:
    return "".join(_said(part, kitchen) if isinstance(part, Measured) else str(part) for part in wording)


def _said(figure: Measured, kitchen: Kitchen) -> str:
    """As a baker types it: `4 C`, `2 h`, `3.5%`."""
    unit, turned = _UNITS.get(figure.unit, f" {figure.unit}"), False
    if figure.unit == "C" and kitchen.degrees == "F":
        unit, turned = " F", True
    ends = [end for end in (figure.low, figure.high) if end is not None]
    ends = [in_fahrenheit(end) for end in ends] if turned else ends
    return "-".join(decimal(end, telling(end, 0 if turned else 2)) for end in ends) + unit
