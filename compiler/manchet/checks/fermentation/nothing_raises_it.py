"""A bread that should rise has no yeast, no culture and no raising agent."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import ingredients
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "nothing-raises-it"
ABOUT = ("unraised",)
RAISING = frozenset({"yeast", "sweet-dough yeast", "culture", "raising agent"})


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if not formula.bread.risen:
        return
    if any(ingredient.class_ in RAISING for ingredient in ingredients(formula)):
        return
    if any(stage.from_nothing or stage.shared for stage in formula.stages):
        return
    message = f"nothing raises {formula.name}: it has no yeast, no culture and no raising agent"
    help = "add the yeast or the levain; an unraised bread may be of kind `flatbread` or `crisp`"
    yield report(NAME, formula.place, message, help)
