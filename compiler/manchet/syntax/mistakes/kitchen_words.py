"""Words of the trade for what has one name here: the things of a kitchen, the lines of a head or of an entry."""

from __future__ import annotations

from manchet.syntax.mistakes.lookalikes import longest

OF_A_KITCHEN: dict[str, dict[str, str]] = {
    "kitchen": {
        "room temperature": "air",
        "room temp": "air",
        "ambient temp": "air",
        "ambient temperature": "air",
        "tap temp": "tap",
        "tap temperature": "tap",
        "water temp": "tap",
        "water temperature": "tap",
        "flour temp": "flour",
        "room": "air",
        "ambient": "air",
        "tap water": "tap",
        "flour temperature": "flour",
        "water from tap": "tap",
        "water from the tap": "tap",
        "spiral mixer": "mixer spiral",
        "planetary mixer": "mixer planetary",
        "stand mixer": "mixer stand",
        "retarder": "fridge",
        "retarder prover": "prover",
        "cooler": "fridge",
        "walk in": "fridge",
        "walk-in": "fridge",
        "cold room": "fridge",
        "blast chiller": "fridge",
        "blast freezer": "freezer",
        "deck oven": "oven",
        "banneton": "basket",
        "brotform": "basket",
        "staff": "hands",
    },
    "formula": {
        "baking loss": "bake loss",
        "oven loss": "bake loss",
        "bake out at": "bake loss",
        "bakes out at": "bake loss",
        "loss": "bake loss, dough loss",
        "losses": "bake loss, dough loss",
        "waste": "dough loss",
    },
    "entry": {"contains": "allergens", "cost": "price", "costs": "price"},
    "thing": {
        "opens": "door",
        "opening": "door",
        "max": "hottest",
        "maximum": "hottest",
        "max temp": "hottest",
        "max temperature": "hottest",
        "maximum temp": "hottest",
        "maximum temperature": "hottest",
        "capacity": "holds",
        "heats up in": "heats in",
        "preheat": "heats in",
        "preheats": "heats in",
        "preheats in": "heats in",
        "preheat in": "heats in",
    },
}
"""What stands for them in a kitchen's lines and in those under its things, in the head of a formula and in an entry of the larder,
the rest of the line as it is; several where it may be each, the likeliest first."""

BY_WEIGHT = {"capacity": "takes", "max": "takes", "maximum": "takes"}
"""What stands for them before a weight: a mixer takes dough, an oven holds loaves."""


def of_a_kitchen(words: list[str], context: str, weighed: bool = False) -> tuple[str, str] | None:
    """The words a kitchen's line begins with, and what stands for them; `weighed` where a weight is told of."""
    table = OF_A_KITCHEN.get(context, {})
    found = longest(words, table)
    if found is None:
        return None
    return found, BY_WEIGHT.get(found, table[found]) if weighed else table[found]
