"""Kinds of yeast brought to one."""

from __future__ import annotations

from fractions import Fraction

from manchet.larder.ingredient import Ingredient

INSTANT = Fraction(100, 33)
ACTIVE_DRY = Fraction(5, 2)
"""Grams of fresh yeast that 1 g replaces: fresh : active dry : instant = 1 : 0.4 : 0.33 (Hamelman, Bread, 2004)."""


def fresh_equivalent(ingredient: Ingredient, share: Fraction) -> Fraction:
    """The same raising power as fresh yeast, in the unit of `share`."""
    name = ingredient.name.casefold()
    if "fresh" in name or "compressed" in name:
        return share
    if "active" in name:
        return share * ACTIVE_DRY
    return share * INSTANT
