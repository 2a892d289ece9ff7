"""The same ingredient twice in a stage."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.naming import Meaning


def line_key(meaning: Meaning) -> str:
    """What a stage has one line of: an ingredient by whatever name; water by each of its names, since warm and cold water are
    weighed apart."""
    return fold(meaning.name) if _is_water(meaning) else meaning.key


def _is_water(meaning: Meaning) -> bool:
    return meaning.ingredient is not None and meaning.ingredient.class_ == "water"


def stands_twice(meaning: Meaning, place: Place, there: Meaning, first: Place) -> Diagnostic:
    name, other = meaning.name, there.name
    known = meaning.ingredient.name if meaning.ingredient is not None else name
    help = f"write one line with all of it; in a stage, two temperatures may stand apart: `{known} … at 30 C`"
    if fold(name) == fold(other):
        message = f"{name} is written twice here"
    else:
        message = f"{name} and {other} are one: the larder has both as {known}"
        if not _is_water(meaning):
            help = f"write one line with all of it; if you mean two things, give each its own name: `{name}` in your larder"
    return report("ingredient-twice", place, message, help, (first, "the first is here"))
