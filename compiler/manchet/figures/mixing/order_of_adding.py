"""In what order the things of a first mix go into the bowl.

Liquids and what is soft first, so that no dry flour stays under the hook; then what is dry, the yeast on the flour; then
salt, away from the yeast, and fat, which would keep water from the flour. Common practice. What the file holds back
goes in where the file adds it.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Portion

WET = frozenset({"water", "liquid", "egg", "culture"})
LAST = frozenset({"salt", "fat", "fruit", "nut", "vegetable"})
"""Everything else but what pours is dry."""

POURS = {"dairy": Fraction(70), "sweetener": Fraction(10)}
"""Per cent of water from which on a thing of that class pours: milk and yoghurt but not cheese, honey but not sugar."""


def order_of_adding(portions: Iterable[Portion]) -> tuple[tuple[Portion, ...], ...]:
    """What goes in first, then, and last; none empty. Liquids stand before the stages that are loosened in them."""
    turns: tuple[list[Portion], ...] = ([], [], [])
    for portion in sorted(portions, key=lambda each: each.ingredient is None):
        turns[_turn(portion)].append(portion)
    return tuple(tuple(turn) for turn in turns if turn)


def _turn(portion: Portion) -> int:
    """0, 1 or 2. A stage or a preparation (no ingredient) is soft."""
    ingredient = portion.ingredient
    if ingredient is None or ingredient.class_ in WET:
        return 0
    if ingredient.class_ in LAST and not portion.is_flour:
        return 2
    pours = POURS.get(ingredient.class_)
    return 0 if pours is not None and ingredient.composition.get("water", Fraction(0)) >= pours else 1
