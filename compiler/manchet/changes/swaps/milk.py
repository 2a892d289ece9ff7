"""Milk for milk powder and water, and back: by what is dry in both.

The larder's figures (USDA SR28): 100 g of skimmed milk are 9.46 g of its powder and 90.54 g of water. Whole milk for powder of
skimmed milk goes by the dry matter without fat; the milk's fat is then missing, and the sheet says so.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.changes.swaps.exchange import Asking, Exchange, SwapRule, balance_water
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import decimal

POWDERS = {
    "milk": ("whole milk powder", "milk powder", "instant milk powder"),
    "skimmed milk": ("milk powder", "instant milk powder"),
    "buttermilk": ("buttermilk powder",),
    "whey": ("whey powder",),
}
NOTHING = Fraction(0)


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | None:
    if on.name in POWDERS.get(off.name, ()):
        return _powder(off, on, asking)
    if off.name in POWDERS.get(on.name, ()):
        found = _powder(on, off, asking)
        return found.back() if found else None
    return None


def _powder(milk: Ingredient, powder: Ingredient, asking: Asking) -> Exchange | None:
    water, left = milk.composition.get("water"), powder.composition.get("water")
    if water is None or left is None:
        return None
    fat, fat_left = milk.composition.get("fat", NOTHING), powder.composition.get("fat", NOTHING)
    if milk.name == "milk" and powder.name != "whole milk powder":
        factor = (100 - water - fat) / (100 - left - fat_left)
        missing = fat - factor * fat_left
        said = f"fat is not made up: {decimal(missing, 1)} g in 100 g of milk"
        found = balance_water(milk, powder, factor, asking.larder, f"dry matter without fat, {powder.source}", said)
    else:
        factor = (100 - water) / (100 - left)
        found = balance_water(milk, powder, factor, asking.larder, f"dry matter, {powder.source}")
    return _with_its_own_water(found, factor * left / 100)


def _with_its_own_water(exchange: Exchange, water: Fraction) -> Exchange:
    """Less water by what the powder brings in itself, so that both together weigh what the milk did."""
    moves = tuple((name, grams - water if name == "water" else grams) for name, grams in exchange.moves)
    return exchange._replace(moves=moves)


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return (*POWDERS.get(off.name, ()), *(milk for milk, powders in POWDERS.items() if off.name in powders))


RULE = SwapRule(_between, _instead_of)
