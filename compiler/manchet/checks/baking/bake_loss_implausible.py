"""A bake loss outside what loaves of this kind lose."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.usual_bake_loss import poured_water
from manchet.batch.work import Work
from manchet.checks.looking import boiled_paste, breads
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.quantities.printing import round_to

NAME = "bake-loss-implausible"
ABOUT = ("bake loss",)

DRIEST = Fraction(7, 10)
"""Of the water a dough took up, what a bread with a crumb has lost at the most; half is usual (Boutroux, 1897). Our rule."""


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    least, most = limit("bake-loss-least", work.kind), limit("bake-loss-most", work.kind)
    if boiled_paste(formula):
        most = limit("bake-loss-most")  # hollow, and mostly dried
    for noun, _ in breads(formula):
        loss, losing = formula.piece_loss(noun), formula.losing_steps(noun)
        place = losing[0].place if losing else formula.place
        water = poured_water(formula)
        if loss is not None and water and loss > DRIEST * water and work.bread.crust:
            message = f"a bake loss of {percent(loss)} is most of the water there is, {percent(water)} of the dough: a rusk is left"
            yield report(
                NAME,
                place,
                message,
                f"such a dough loses about {percent(round_to(water * 40, 0) / 100)}; weigh ten pieces before and after",
            )
            return
        if loss is None or most is None or ((least is None or loss >= least) and loss <= most):
            continue
        bounds = f"up to {percent(most)}" if least is None else f"{percent(least)} to {percent(most)}"
        message = f"a bake loss of {percent(loss)}; a {work.kind or 'bread'} loses {bounds} of its dough"
        help = "weigh ten pieces before and after baking; check the decimal point"
        yield report(NAME, place, message, help)
        return
