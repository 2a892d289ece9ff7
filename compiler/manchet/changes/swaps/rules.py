"""Every rule of swapping, in the order they are asked."""

from __future__ import annotations

from manchet.changes.swaps import fats, flours, milk, sweeteners, yeasts
from manchet.changes.swaps.exchange import Asking, Asks, Exchange
from manchet.larder.ingredient import Ingredient

RULES = (yeasts.RULE, milk.RULE, fats.RULE, sweeteners.RULE, flours.RULE)
YEASTS = frozenset({"yeast", "sweet-dough yeast"})


def exchange(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | Asks | None:
    """How much of `on` for a gram of `off`, and what moves; a figure that is lacking; None where no rule knows."""
    if off.name == on.name:
        return None
    return next((found for rule in RULES if (found := rule.between(off, on, asking)) is not None), None)


def instead_of(off: Ingredient) -> tuple[str, ...]:
    """Names of what can be put in its place."""
    found = dict.fromkeys(name for rule in RULES for name in rule.instead_of(off))
    if off.class_ in YEASTS:
        found["a culture, `with 20% of all flour`"] = None
    return tuple(found)
