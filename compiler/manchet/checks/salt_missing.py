"""A bread that usually has salt has none, in the dough or in anything made before it."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "salt-missing"


def check(subject: Subject) -> Iterator[Diagnostic]:
    usual = limit("salt-usual", subject.kind)
    if usual is None or subject.formula.preparation or subject.totals.salt > 0:
        return
    yield warning(
        NAME,
        subject.formula.place,
        f"{subject.formula.name} has no salt, and nothing in it brings any",
        'add a line such as `salt 2%`, or say `allow salt-missing because "…"`',
    )
