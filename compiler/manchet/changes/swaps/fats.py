"""Fats for one another by the fat in them: butter for oil with its water and salt made up, salted butter for unsalted."""

from __future__ import annotations

from manchet.changes.swaps.exchange import Asking, Exchange, SwapRule, by_what_is_in_them
from manchet.larder.ingredient import Ingredient

USUAL = ("butter", "salted butter", "sunflower oil", "olive oil", "lard")


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | None:
    if off.class_ != "fat" or on.class_ != "fat":
        return None
    found = by_what_is_in_them(off, on, "fat", asking, "as much fat, by the larder's composition")
    return found and found._replace(touches=True)


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return tuple(name for name in USUAL if name != off.name) if off.class_ == "fat" else ()


RULE = SwapRule(_between, _instead_of)
