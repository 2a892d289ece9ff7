"""The figures of composition that a house's own entry leaves to the built-in entry of its name."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.larder.ingredient import Ingredient

NOTHING = Fraction(0)
HUNDRED = Fraction(100)

WHOLES = ("protein", "fat", "carbohydrate", "fibre", "ash", "alcohol", "acid", "polyols")
"""Of dry matter; water is told apart."""
PARTS = {"saturates": "fat", "sugars": "carbohydrate", "starch": "carbohydrate"}
BY_NITROGEN = Fraction("6.25")


def composition_on_top(own: Mapping[str, Fraction], below: Mapping[str, Fraction]) -> Mapping[str, Fraction]:
    """What the house says, and what it does not say scaled to the dry matter that it leaves: a flour of 13 g of water and 8.9 g of
    protein has as much fat as its namesake has in 78.1 g of all that is neither. A part goes with its whole: saturates with fat."""
    if not own or not below:
        return own or below
    found = dict(own)
    if "water" in below:
        found.setdefault("water", below["water"])
    left, below_left = (
        HUNDRED
        - figures.get("water", NOTHING)
        - sum((figures.get(name, NOTHING) for name in WHOLES if name in own), NOTHING)
        for figures in (found, below)
    )
    ratio = max(left, NOTHING) / below_left if below_left > 0 else Fraction(1)
    for name, figure in below.items():
        if name in found or (name == "salt" and "sodium" in found) or (name == "sodium" and "salt" in found):
            continue
        whole = PARTS.get(name)
        if whole is not None and whole in own and below.get(whole):
            found[name] = figure * own[whole] / below[whole]
        else:
            found[name] = figure * ratio
    return found


def factor_on_top(entry: Ingredient, below: Ingredient | None) -> Fraction | None:
    """The nitrogen factor behind its protein: as the entry says, 6.25 for a protein of the house, that of the built-in entry where
    the protein is that one's."""
    if entry.protein_factor is not None or "protein" in entry.composition:
        return BY_NITROGEN if entry.protein_factor is None else entry.protein_factor
    return None if below is None or entry.made_of else below.protein_factor
