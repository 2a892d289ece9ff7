"""Foods by what their names say, where the larder has no class for it: raw or cooked, dry or wet, meat, fish, leaves.

What is not said is the worse: raw, wet, not pasteurised.
"""

from __future__ import annotations

import re

from manchet.larder.ingredient import Ingredient

DRY = ("dried", "flakes", "powder", "ground", "starch", "flour", "seed", "seeds", "cayenne")
SOUR = ("olives", "capers", "sauerkraut", "paste", "puree", "pickled")
"""Sour or salt enough in the jar they come in."""
STARCHY = ("potato", "potatoes")

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

    What is dried counts as wet once it is `soaked`. Potato and what is sour from its jar is not meant.
    """
    named = words_of_name(written) | words_of_name(ingredient.name)
    if named & {*SOUR, *STARCHY}:
        return False
    herb = ingredient.class_ == "spice" and named & {*LEAVES_AND_ROOTS, "fresh", "leaves"}
    if not (herb or ingredient.class_ == "vegetable"):
        return False
    return soaked or not named & {*DRY}


def raw_meat_or_fish(name: str) -> bool:
    named = words_of_name(name)
    return bool(named & (MEAT | FISH)) and not named & NOT_RAW


def raw_fish(name: str) -> bool:
    named = words_of_name(name)
    return bool(named & FISH) and not named & NOT_RAW


def is_pasteurised(name: str) -> bool:
    return any(word in name.casefold() for word in PASTEURISED)
