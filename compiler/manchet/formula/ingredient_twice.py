"""The same ingredient twice in a stage."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.naming import Meaning


def line_key(meaning: Meaning) -> str:
    """What a stage has one line of: an ingredient by whatever name; water by each of its names, since warm and cold water are
    weighed apart."""
    is_water = meaning.ingredient is not None and meaning.ingredient.class_ == "water"
    return fold(meaning.name) if is_water else meaning.key


def stands_twice(meaning: Meaning, place: Place, there: Meaning, first: Place) -> Diagnostic:
    name, other = meaning.name, there.name
    help = f"write one line with all of it; in a stage, two temperatures may stand apart: `{name} … at 30 C`"
    if fold(name) == fold(other):
        message = f"{name} stands twice here"
    else:
        known = meaning.ingredient.name if meaning.ingredient is not None else name
        message = f"{name} and {other} are one: the larder has both as {known}"
        help = (
            f"write one line with all of it; if two things are meant, give each its own name: `{name}` in your larder"
        )
    return report("ingredient-twice", place, message, help, (first, "the first stands here"))
