"""Sweeteners for one another by the sugar in them, with the water of honey and syrups taken off or made up.

By sugar, not by sweetness: what the yeast meets stays the same, what the tongue finds need not.
"""

from __future__ import annotations

from manchet.formula.swaps.exchange import Asking, Exchange, Rule, by_what_is_in_them
from manchet.larder.ingredient import Ingredient

USUAL = ("sugar", "honey", "brown sugar")


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | None:
    if off.class_ != "sweetener" or on.class_ != "sweetener":
        return None
    return by_what_is_in_them(off, on, "sugars", asking, "as much sugar, by the larder's composition")


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return tuple(name for name in USUAL if name != off.name) if off.class_ == "sweetener" else ()


RULE = Rule(_between, _instead_of)
