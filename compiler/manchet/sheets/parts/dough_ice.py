"""How warm the dough's liquid is to be and the ice in it, as every form that weighs the dough says it: part of one line, to 5 g."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.water.water_grid import DoughWater, WaterGridCell, water_of
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.water import degrees, to_fives, whole_degrees


def dough_water(work: Work) -> DoughWater | None:
    return None if work.formula.preparation else water_of(work)


def ice_in_the_dough(work: Work, m: Measures) -> Mapping[str, Fraction]:
    """Grams in one bowl of dough, by the key of the liquid: where one line holds it all."""
    water = dough_water(work)
    if water is None or len(water.balance.free) != 1:
        return {}
    return {water.balance.free[0].portion.key: _for_the_kitchen(water, m)}


def degrees_of_the_dough(work: Work, m: Measures) -> Mapping[str, str]:
    """`about 18 °C`, by the key of the liquid: where one line holds it all, for the flour and the room that the kitchen gives.
    Below freezing the ice alone says it."""
    water = dough_water(work)
    cell = None if water is None or len(water.balance.free) != 1 else water.here
    if water is None or cell is None or not cell.can_be or (grams_of_ice(cell, water, m) and cell.celsius < 0):
        return {}
    return {water.balance.free[0].portion.key: m.words.say("water.about", degrees(cell.celsius, m))}


def _for_the_kitchen(water: DoughWater, m: Measures) -> Fraction:
    """Grams for the flour and the room that the kitchen gives."""
    return Fraction(0) if water.here is None else grams_of_ice(water.here, water, m)


def grams_of_ice(cell: WaterGridCell, water: DoughWater, m: Measures) -> Fraction:
    """To 5 g, an estimate being no finer; where the tap is too warm by a degree that a thermometer shows."""
    ice = to_fives(cell.ice or Fraction(0))
    warm_enough = water.tap is None or whole_degrees(cell.celsius, m) >= whole_degrees(water.tap, m)
    return Fraction(0) if warm_enough or not cell.can_be else ice
