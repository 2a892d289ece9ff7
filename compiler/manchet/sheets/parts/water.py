"""How warm the liquid of a stage is to be, and how water and ice are said."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.water.dough_temperature import Balance
from manchet.figures.water.stage_water import StageWater
from manchet.figures.water.water_grid import HOT_TAP
from manchet.formula.model import Range
from manchet.quantities.printing import round_to
from manchet.sheets.page.measures import NBSP, OUNCE, Measures


def stage_water_note(water: StageWater, m: Measures) -> str:
    """`about 27 °C`, for what is mixed before the dough; or that it cannot be."""
    if not water.can_be:
        return m.words.say(
            "water.cannot", water.balance.liquid, degrees(water.balance.wanted, m), comes_to(water.balance, m)
        )
    return m.words.say("water.about", degrees(water.celsius.likely, m))


def ice_of_stage(water: StageWater, m: Measures) -> Fraction:
    """Grams of ice that are part of its liquid, to 5 g: where the tap is too warm by a degree that a thermometer shows."""
    if not water.can_be or not water.ice:
        return Fraction(0)
    too_warm = whole_degrees(water.celsius.likely, m) < whole_degrees(water.around.tap, m)
    return to_fives(water.ice) if too_warm else Fraction(0)


def comes_to(balance: Balance, m: Measures) -> str:
    """`all of it ice: about 29 °C`: what is had at the end of what can be."""
    hot = balance.water().likely > HOT_TAP
    end = HOT_TAP if hot else balance.coldest
    comes = degrees(balance.dough(end).likely, m)
    if balance.of_water and not hot:
        return m.words.say("water.all_ice", comes)
    return m.words.say("water.with_liquid", balance.liquid, degrees(end, m), comes)


def weight_of_ice(grams: Fraction, m: Measures) -> str:
    """In pounds to the quarter ounce, so that a table has one way of saying it."""
    return str(m.weight(max(grams, OUNCE / 4), OUNCE / 4)) if m.house.units == "US" else m.mass(grams)


def to_fives(grams: Fraction) -> Fraction:
    return round_to(grams / 5, 0) * 5


def whole_degrees(celsius: Fraction, m: Measures) -> Fraction:
    """To the whole degree that the house reads."""
    return round_to(m.reading(celsius), 0)


def degrees(celsius: Fraction, m: Measures) -> str:
    return degrees_between(whole_degrees(celsius, m), m)


def degrees_between(low: Fraction, m: Measures, high: Fraction | None = None) -> str:
    """Whole degrees of the house, with their unit."""
    return f"{m.plain(Range(low, low if high is None else high), 0)}{NBSP}{m.degree()}"
