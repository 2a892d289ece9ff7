"""A lye bath stronger than any pretzel wants, and more dangerous."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.composition.lye import lye_in
from manchet.figures.limits.lookup import limit
from manchet.larder.ingredient import Ingredient

NAME = "lye-bath-strong"
ABOUT = ("class lye",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("lye-bath-most")
    if most is None:
        return
    for stage in work.formula.stages:
        lye = sum((lye_in(p.ingredient) * p.share for p in stage.portions), Fraction(0))
        whole = sum((p.share for p in stage.portions), Fraction(0))
        if (stage is work.formula.dough and not work.formula.preparation) or not whole or lye / whole <= most:
            continue
        place = next(p.place for p in stage.portions if _is_lye(p.ingredient))
        message = f"the bath is {percent(lye / whole)} lye; 3 to 4% is usual, and over {percent(most)} is never needed"
        yield report(NAME, place, message, "check the decimal point; weigh the lye again before it is poured")


def _is_lye(ingredient: Ingredient | None) -> bool:
    return ingredient is not None and ingredient.class_ == "lye"
