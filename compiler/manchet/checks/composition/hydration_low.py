"""Less water in all than this kind of dough can be made with."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "hydration-low"
ABOUT = ()

MUCH = Fraction(1, 4)
"""Boiled potato, pumpkin, apple, of all flour, from which on they wet the dough with water that is not poured. Our rule."""


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("water-least", work.kind)
    water = work.totals.water_in_all
    if least is None or water >= least or not work.formula.has_flour:
        return
    if sum((work.totals.by_class.get(name, Fraction(0)) for name in ("vegetable", "fruit")), Fraction(0)) >= MUCH:
        return
    message = (
        f"water in all is {percent(water)} of the flour; a {work.kind} dough seldom has less than {percent(least)}"
    )
    help = "look for a missing liquid, a wrong unit or a slipped decimal point"
    yield report(NAME, place_of_class(work.formula, "water", "dairy", "liquid"), message, help)
