"""Lye in what is weighed."""

from __future__ import annotations

from fractions import Fraction

from manchet.larder.ingredient import Ingredient


def lye_in(ingredient: Ingredient | None) -> Fraction:
    """How much of it is lye, by weight: a liquor is what its water leaves."""
    if ingredient is None or ingredient.class_ != "lye":
        return Fraction(0)
    return 1 - ingredient.composition.get("water", Fraction(0)) / 100
