"""Foods by what their names say, where the larder has no class for it: raw or cooked, dry or wet, meat, fish, leaves.

What is not said is the worse: raw, wet, not pasteurised.
"""

from __future__ import annotations

import re

from manchet.larder.ingredient import Ingredient

DRY = ("dried", "flakes", "powder", "ground", "starch", "flour", "seed", "seeds", "cayenne")
ASKED = ("dried", "flakes")
"""May be as soft as half dry, or go in soaked: that is asked about. A powder and a seed are dry."""
SOUR = ("olives", "capers", "sauerkraut", "pickled")
"""Sour or salt enough in the jar they come in; so is tomato boiled down, but no other paste or puree."""

LEAVES_AND_ROOTS = frozenset(
    {
        "basil", "chervil", "chilli", "chillies", "chili", "chilies", "chile", "chiles", "cilantro", "dill", "ginger",
        "horseradish", "jalapenos", "lemongrass", "lovage", "marjoram", "mint", "oregano", "parsley", "ramsons", "rosemary",
        "sage", "savory", "sorrel", "tarragon", "thyme", "turmeric",
    }
)  # fmt: skip
"""Plants that the larder has among its spices, and that grow wet: the seeds beside them are dry."""

MEAT = frozenset(
    {
        "bacon", "beef", "chicken", "chorizo", "duck", "ham", "lamb", "liver", "meat", "mince", "pork", "sausage", "sausagemeat",
        "sausages", "turkey", "veal", "venison",
    }
)  # fmt: skip
FISH = frozenset(
    {"cod", "eel", "fish", "haddock", "halibut", "herring", "mackerel", "prawns", "salmon", "shrimp", "trout", "tuna"}
)
NOT_RAW = frozenset(
    {
        "boiled",
        "canned",
        "cooked",
        "roast",
        "roasted",
        "tinned",
        "fat",
        "lard",
        "stock",
        "broth",
        "sauce",
        "gelatine",
        "gelatin",
    }
)
PASTEURISED = ("pasteurised", "pasteurized")


def words_of_name(name: str) -> frozenset[str]:
    return frozenset(re.findall(r"[a-z]+", name.casefold()))


def grows_wet(ingredient: Ingredient, written: str, soaked: bool = False) -> bool:
    """Whether a plant brings water of its own under fat. `written`: its name in the file, which may say `fresh` or `dried`.

    What is dried counts as wet once it is `soaked`. What is sour from its jar is not meant.
    """
    named = _named(ingredient, written)
    return _is_plant(ingredient, named) and (soaked or not named & {*DRY})


def dried_plant(ingredient: Ingredient, written: str) -> bool:
    """Whether it would grow wet, and is said to be dried."""
    named = _named(ingredient, written)
    return _is_plant(ingredient, named) and bool(named & {*ASKED})


def _named(ingredient: Ingredient, written: str) -> frozenset[str]:
    return words_of_name(written) | words_of_name(ingredient.name)


def _is_plant(ingredient: Ingredient, named: frozenset[str]) -> bool:
    if named & {*SOUR} or (named & {"paste", "puree"} and named & {"tomato", "tomatoes"}):
        return False
    herb = ingredient.class_ == "spice" and named & {*LEAVES_AND_ROOTS, "fresh", "leaves"}
    return bool(herb) or ingredient.class_ == "vegetable"


def raw_meat_or_fish(name: str) -> bool:
    named = words_of_name(name)
    return bool(named & (MEAT | FISH)) and not named & NOT_RAW


def raw_fish(name: str) -> bool:
    named = words_of_name(name)
    return bool(named & FISH) and not named & NOT_RAW


def is_pasteurised(name: str) -> bool:
    return any(word in name.casefold() for word in PASTEURISED)
