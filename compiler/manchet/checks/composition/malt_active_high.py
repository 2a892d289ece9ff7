"""So much active malt that the crumb turns gummy. Roasted and inactive malts only colour and sweeten."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of, portions
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.ingredient import Ingredient

NAME = "malt-active-high"
ABOUT = ("class malt",)


def is_active(ingredient: Ingredient) -> bool:
    """The larder keeps malts that still work on starch in a class of their own; the others are sweeteners."""
    return ingredient.class_ == "malt" and "red" not in ingredient.name.casefold().split()


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("malt-active-most", work.kind)
    if most is None or work.formula.preparation:
        return
    share = sum((p.share for p in portions(work.formula) if p.ingredient and is_active(p.ingredient)), Fraction(0))
    if share > most:
        message = f"{percent(share)} active malt; over {percent(most)} the crumb turns gummy"
        help = "check the decimal point, or use a malt that is not active for colour and taste"
        yield report(NAME, place_of(work.formula, is_active), message, help)
