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
    {
        "cod",
        "eel",
        "fish",
        "haddock",
        "halibut",
        "herring",
        "mackerel",
        "pollock",
        "prawns",
        "salmon",
        "sardine",
        "sardines",
        "shrimp",
        "shrimps",
        "trout",
        "tuna",
    }
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
ANIMALS = ("meat", "fish")
COLD_RAW = frozenset(
    {
        "tomato",
        "tomatoes",
        "lettuce",
        "rocket",
        "arugula",
        "spinach",
        "cress",
        "watercress",
        "leaves",
        "salad",
        "sprouts",
        "tofu",
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
    dry = "dried" in ingredient.facts or ("fresh" not in ingredient.facts and bool(named & {*DRY}))
    return _is_plant(ingredient, named) and (soaked or not dry)


def dried_plant(ingredient: Ingredient, written: str) -> bool:
    """Whether it would grow wet, and is said to be dried."""
    named = _named(ingredient, written)
    return _is_plant(ingredient, named) and bool(named & {*ASKED})


def _named(ingredient: Ingredient, written: str) -> frozenset[str]:
    return words_of_name(written) | words_of_name(ingredient.name)


def _is_plant(ingredient: Ingredient, named: frozenset[str]) -> bool:
    if named & {*SOUR} or (named & {"paste", "puree"} and named & {"tomato", "tomatoes"}):
        return False
    wet_herb = named & {*LEAVES_AND_ROOTS, "fresh", "leaves"} or "fresh" in ingredient.facts
    herb = ingredient.class_ == "spice" and wet_herb
    return bool(herb) or ingredient.class_ == "vegetable"


def is_meat_or_fish(ingredient: Ingredient, written: str) -> bool:
    """By its class, or by its name where it has none of its own."""
    return ingredient.class_ in ANIMALS or (
        ingredient.class_ == "other" and bool(_named(ingredient, written) & (MEAT | FISH))
    )


def raw_meat_or_fish(ingredient: Ingredient, written: str) -> bool:
    if "ready to eat" in ingredient.facts:
        return False
    return is_meat_or_fish(ingredient, written) and not _named(ingredient, written) & NOT_RAW


def raw_fish(ingredient: Ingredient, written: str) -> bool:
    is_fish = ingredient.class_ == "fish" or bool(_named(ingredient, written) & FISH)
    return is_fish and raw_meat_or_fish(ingredient, written)


def is_pasteurised(name: str) -> bool:
    return any(word in name.casefold() for word in PASTEURISED)


def is_heat_treated(ingredient: Ingredient, written: str) -> bool:
    if "heat-treated" in ingredient.facts:
        return True
    return any("heat treated" in name.casefold().replace("-", " ") for name in (written, ingredient.name))


def cut_leaf(ingredient: Ingredient, written: str) -> bool:
    """Cut tomato, cut leaves, sprouts, which have to stay cold though they are raw; tofu with them."""
    named = _named(ingredient, written)
    return bool(named & COLD_RAW) and not named & {*DRY, *SOUR, "paste", "ketchup"}
