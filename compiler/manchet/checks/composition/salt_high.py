"""More salt than bread of this kind can carry, salt of every ingredient counted in."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "salt-high"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("salt-most", work.kind)
    salt = work.totals.salt
    if most is None or work.formula.preparation or salt <= most:
        return
    tenth = salt / 10
    help = (
        f"was {percent(tenth)} meant? look at the decimal point and the unit"
        if salt >= most * 2
        else 'lower it, or say `allow salt-high because "…"`'
    )
    message = (
        f"salt is {percent(salt)} of the flour in all; more than {percent(most)} is hard to eat and slows the yeast"
    )
    yield report(NAME, place_of_class(work.formula, "salt"), message, help)
