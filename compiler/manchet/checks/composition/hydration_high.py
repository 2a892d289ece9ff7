"""More water than this kind of dough holds; what seeds, grain and scalds bind is taken off first."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import boiled_paste, place_of
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.ingredient import Ingredient

NAME = "hydration-high"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("water-most", work.kind)
    if most is None or work.formula.preparation:
        return
    if boiled_paste(work.formula) or not work.formula.has_flour:
        return
    totals = work.totals
    free = totals.water_in_all - totals.bound_water
    thirsty = sum((totals.by_class.get(name, Fraction(0)) for name in ("grain", "seed", "bread")), _thirst(work))
    if free <= most * thirsty:
        return
    message = (
        f"{percent(free)} of the flour is water that nothing has bound; "
        f"more than {percent(most * thirsty)} makes a batter"
    )
    help = "check the unit and the decimal point of the liquids"
    yield report(NAME, place_of(work.formula, lambda ingredient: ingredient is _wettest(work)), message, help)


USUAL = Fraction(70, 100)
"""Water that the thirstiest of common flours takes, of its weight: wholemeal, rye. Our rule."""


def _thirst(work: Work) -> Fraction:
    """How many times as much water the flours take as common ones: 1, and more of lime-cooked maize."""
    found = Fraction(1)
    for line in work.formula.overall:
        takes = line.ingredient.takes_water if line.is_flour and line.ingredient is not None else None
        if takes is not None and takes.high > USUAL:
            found += line.share * (takes.high / USUAL - 1)
    return found


def _wettest(work: Work) -> Ingredient | None:
    """What brings the most water."""
    lines = [line for line in work.formula.overall if line.ingredient is not None]
    brings = [(line.share * work.larder.poured(line.ingredient).water, line) for line in lines if line.ingredient]
    return max(brings, key=lambda one: one[0])[1].ingredient if brings else None
