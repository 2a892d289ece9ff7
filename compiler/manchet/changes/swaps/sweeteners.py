"""Sweeteners for one another by the sugar in them, with the water of honey and syrups taken off or made up.

By sugar, not by sweetness: what the yeast meets stays the same, what the tongue finds need not.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.changes.swaps.exchange import Asking, Exchange, SwapRule, by_what_is_in_them
from manchet.larder.ingredient import Ingredient

POURS = Fraction(10)
"""Grams of water in 100 g from which a sweetener is a syrup. Our own rule; brown sugar has 1 to 2."""
USUAL = ("sugar", "honey", "brown sugar")


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | None:
    if off.class_ != "sweetener" or on.class_ != "sweetener":
        return None
    found = by_what_is_in_them(off, on, "sugars", asking, "as much sugar, by the larder's composition")
    return found and found._replace(touches=_pours(off) is _pours(on))


def _pours(sweetener: Ingredient) -> bool:
    """Sugar can be sprinkled, syrup brushed, and neither does the work of the other."""
    return sweetener.composition.get("water", Fraction(0)) >= POURS


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return tuple(name for name in USUAL if name != off.name) if off.class_ == "sweetener" else ()


RULE = SwapRule(_between, _instead_of)
