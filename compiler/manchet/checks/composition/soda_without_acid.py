"""Soda gives no gas without something sour, and leaves a soapy taste."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.composition.raising_agent_high import is_powder, is_soda
from manchet.checks.looking import ingredients, is_alive, likely, of_verbs, place_of
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import TIME_TO_RISE

NAME = "soda-without-acid"
ABOUT = ("class raising agent",)
SOUR = (
    "buttermilk", "yoghurt", "yogurt", "sour", "kefir", "whey", "skyr", "quark", "lemon", "vinegar", "tartar", "citric",
    "treacle", "molasses", "honey", "brown sugar", "muscovado", "cocoa", "chocolate", "apple", "orange", "ascorbic",
)  # fmt: skip
"""Words in the names of ingredients sour enough to work on soda."""


def is_sour(ingredient: Ingredient) -> bool:
    name = ingredient.name.casefold()
    return ingredient.class_ in ("culture", "fruit") or is_powder(ingredient) or any(word in name for word in SOUR)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if formula.preparation or formula.bread.soda_alone:
        return
    if _soured(work):
        return
    found = list(ingredients(formula))
    if any(is_soda(i) for i in found) and not any(is_sour(i) for i in found):
        message = "soda with nothing sour to work on: it gives little gas and tastes of soap"
        help = "use buttermilk or yoghurt for part of the liquid, or baking powder, which brings its own acid"
        yield report(NAME, place_of(formula, is_soda), message, help)


def _soured(work: Work) -> bool:
    """Whether yeast has worked in it for an hour, in the dough or in a stage: what it makes is sour enough for some soda."""
    for stage in work.formula.stages:
        waits = list(of_verbs(stage.steps, *TIME_TO_RISE))
        if is_alive(stage, work.formula) and likely(waits) >= 3600:
            return True
    return False
