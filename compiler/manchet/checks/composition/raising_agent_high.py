"""So much baking powder or soda that it is tasted."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of, portions
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.ingredient import Ingredient

NAME = "raising-agent-high"
ABOUT = ("class raising agent",)


def is_soda(ingredient: Ingredient) -> bool:
    name = ingredient.name.casefold()
    return ingredient.class_ == "raising agent" and ("soda" in name or "bicarbonate" in name)


def is_powder(ingredient: Ingredient) -> bool:
    return ingredient.class_ == "raising agent" and "powder" in ingredient.name.casefold()


def check(work: Work) -> Iterator[Diagnostic]:
    if work.formula.preparation:
        return
    for wanted, key, what in ((is_soda, "soda-most", "soda"), (is_powder, "baking-powder-most", "baking powder")):
        most = limit(key)
        share = sum((p.share for p in portions(work.formula) if p.ingredient and wanted(p.ingredient)), Fraction(0))
        if most is not None and share > most:
            message = f"{percent(share)} {what}; over {percent(most)} it tastes of it"
            yield report(NAME, place_of(work.formula, wanted), message, "check the decimal point and the spoon")
