"""Less salt than the kind of bread usually has, salt of olives, cheese and salted butter counted in."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "salt-low"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("salt-least", work.kind)
    salt = work.totals.salt
    if least is None or not 0 < salt < least or not work.formula.has_flour:
        return
    message = f"salt is {percent(salt)} of the flour in all; a {work.kind} seldom has less than {percent(least)}"
    help = 'check the decimal point and the unit; if you mean it, write `allow salt-low because "…"`'
    yield report(NAME, place_of_class(work.formula, "salt"), message, help)
