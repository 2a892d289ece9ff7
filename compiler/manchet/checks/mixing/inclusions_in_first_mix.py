"""Fruit, nuts or cheese that no step names, so that they go in with the flour and are torn by the mixer."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.ingredient import Ingredient

NAME = "inclusions-in-first-mix"
ABOUT = ("class fruit", "class nut", "class vegetable", "class dairy", "class other")
CHEESE = ("cheese", "feta", "cheddar", "olive")


def is_inclusion(ingredient: Ingredient) -> bool:
    name = ingredient.name.casefold()
    ground = any(
        word in name for word in ("meal", "ground", "flour", "puree", "purée", "juice", "paste", "zest", "oil")
    )
    return not ground and (ingredient.class_ in ("fruit", "nut") or any(word in name for word in CHEESE))


def check(work: Work) -> Iterator[Diagnostic]:
    dough, least = work.formula.dough, limit("inclusion-least")
    if least is None or not work.bread.whole_pieces:
        return
    if not any("by hand" not in step.manner for step in of_verbs(dough.steps, "mix")):
        return
    for portion in dough.portions:
        if portion.held or portion.ingredient is None or portion.share < least or not is_inclusion(portion.ingredient):
            continue
        message = f"{portion.name} ({percent(portion.share)}) goes in with the flour, and the whole mix tears at it"
        help = f"if it should stay whole, `hold back {portion.name}` and `add {portion.name}` at the end of the mix"
        yield report(NAME, portion.place, message, help)
