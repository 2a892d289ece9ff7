"""Less salt than the kind of bread usually has, salt of olives, cheese and salted butter counted in."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "salt-low"


def check(subject: Subject) -> Iterator[Diagnostic]:
    least = limit("salt-least", subject.kind)
    salt = subject.totals.salt
    if least is None or subject.formula.preparation or not 0 < salt < least:
        return
    yield warning(
        NAME,
        place_of_class(subject.formula, "salt"),
        f"salt is {percent(salt)} of the flour in all; a {subject.kind} seldom has under {percent(least)}",
        'look at the decimal point and the unit; if it is meant, say `allow salt-low because "…"`',
    )
