"""What a lecithin, a vegetable fat or an improver comes from: a label cannot do without it, and nobody but the packet knows.

Lecithins are of soya unless the packet says otherwise, and soya is an allergen (Regulation (EU) 1169/2011, Annex II, no. 6); refined fats and
oils of plants are listed with the plants that they are of (Annex VII, part A, nos 8 and 9); an improver is listed with all that it is made
of (Annex VII, part E; 21 CFR 101.4(b)).
"""

from __future__ import annotations

import re

from manchet.larder.allergens import allergen
from manchet.larder.ingredient import Ingredient
from manchet.larder.names import key

_LECITHIN = ("lecithin", "e322")
_OF_PLANTS = ("vegetable fat", "vegetable oil", "vegetable shortening", "shortening", "margarine")
_MIXED = ("improver", "emulsifier")
_SOURCES = (
    "soya", "soy", "soybean", "sunflower", "rapeseed", "canola", "egg", "palm", "coconut", "cocoa", "shea", "olive", "maize", "corn",
    "cottonseed", "groundnut", "peanut",
)  # fmt: skip
"""What these are of, where the name says it: `sunflower lecithin`."""


def lacks_source(ingredient: Ingredient) -> bool:
    """Its label has to say what it comes from, and neither its name says it, nor `from …`, nor `listed as …`."""
    if ingredient.made_from or ingredient.listed_as or ingredient.made_of:
        return False
    names = [key(name) for name in (ingredient.name, *ingredient.aliases)]
    asked = any(_has(name, _LECITHIN + _OF_PLANTS + _MIXED) for name in names)
    return asked and not _has(key(ingredient.name), _SOURCES)


def is_lecithin(ingredient: Ingredient) -> bool:
    return _has(key(ingredient.name), _LECITHIN)


def allergens_of_source(ingredient: Ingredient) -> tuple[str, ...]:
    """`from soya` brings soya, `from palm` none that is listed."""
    words = re.findall(r"\w+", ingredient.made_from)
    return tuple(dict.fromkeys(found for word in words if (found := allergen(word)) is not None))


def with_source(name: str, ingredient: Ingredient) -> str:
    """A name in a list of ingredients with what it comes from, where that is said apart: `vegetable fat (palm)`; of a lecithin with the class
    that an additive is listed by (Annex VII, part C): `emulsifier (soya lecithins)`."""
    if not ingredient.made_from or ingredient.listed_as:
        return name
    source = ingredient.made_from
    return f"emulsifier ({source} lecithins)" if is_lecithin(ingredient) else f"{name} ({source})"


def _has(name: str, words: tuple[str, ...]) -> bool:
    return any(re.search(rf"\b{word}\b", name) for word in words)
