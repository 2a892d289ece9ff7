"""More salt than bread of this kind can carry, salt of every ingredient counted in."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "salt-high"
ABOUT = ()

PLAIN = Fraction(165, 100)
"""Grams of a plain dough for 1 g of flour."""


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("salt-most", work.kind)
    salt = work.totals.salt
    if most is None or work.formula.preparation or salt <= most or _salted_by_others(work, most):
        return
    tenth = salt / 10
    of_what = "the flour" if work.formula.has_flour else "all that is weighed"
    help = (
        f"did you mean {percent(tenth)}? check the decimal point and the unit"
        if salt >= most * 2
        else 'lower it, or write `allow salt-high because "…"`'
    )
    message = (
        f"salt is {percent(salt)} of {of_what} in all; more than {percent(most)} is hard to eat and slows the yeast"
    )
    yield report(NAME, place_of_class(work.formula, "salt"), message, help)


def _salted_by_others(work: Work, most: Fraction) -> bool:
    """Whether cheese, olives or bacon bring the salt, and so much else with it that the whole dough is no saltier."""
    weighed = work.totals.by_class.get("salt", Fraction(0))
    return weighed <= most and work.totals.salt / work.formula.dough_share <= most / PLAIN
