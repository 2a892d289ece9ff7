"""Dried yeast beside fresh, which a shop near home seldom has: by the factors that the kitchen goes by."""

from __future__ import annotations

from fractions import Fraction

from manchet.kitchen.model import Kitchen
from manchet.larder.ingredient import Ingredient
from manchet.sheets.page.measures import Measures

DRIED = {"fresh yeast": "instant yeast", "fresh sweet-dough yeast": "sweet-dough yeast"}
"""What may be weighed instead, by the larder's names."""


def dried_instead(grams: Fraction, ingredient: Ingredient | None, kitchen: Kitchen, m: Measures) -> tuple[str, ...]:
    """`or 2.5 g instant yeast and 5 g more water`: the dough weighs what it did."""
    dried = DRIED.get(ingredient.name) if ingredient is not None else None
    if dried is None:
        return ()
    less = grams * kitchen.yeast_factors.instant
    return (m.words.say("handout.or_dried", m.grams(less), dried, m.grams(grams - less)),)
