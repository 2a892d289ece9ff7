"""More water than this kind of dough holds; what seeds, grain and scalds bind is taken off first."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "hydration-high"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most = limit("water-most", subject.kind)
    if most is None or subject.formula.preparation:
        return
    totals = subject.totals
    free = totals.water_in_all - totals.bound_water
    thirsty = sum((totals.by_class.get(name, Fraction(0)) for name in ("grain", "seed", "bread")), Fraction(1))
    if free <= most * thirsty:
        return
    yield warning(
        NAME,
        place_of_class(subject.formula, "water", "dairy", "liquid"),
        f"{percent(free)} of the flour is water that nothing has bound; "
        f"more than {percent(most * thirsty)} makes a batter",
        "look at the unit and the decimal point of the liquids",
    )
