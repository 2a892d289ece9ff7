"""More water than this kind of dough holds; what seeds, grain and scalds bind is taken off first."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "hydration-high"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("water-most", work.kind)
    if most is None or work.formula.preparation:
        return
    totals = work.totals
    free = totals.water_in_all - totals.bound_water
    thirsty = sum((totals.by_class.get(name, Fraction(0)) for name in ("grain", "seed", "bread")), Fraction(1))
    if free <= most * thirsty:
        return
    message = (
        f"{percent(free)} of the flour is water that nothing has bound; "
        f"more than {percent(most * thirsty)} makes a batter"
    )
    help = "look at the unit and the decimal point of the liquids"
    yield report(NAME, place_of_class(work.formula, "water", "dairy", "liquid"), message, help)
