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
    """`at about 27 °C`, for what is mixed before the dough; with the ice in it, or that it cannot be."""
    if not water.can_be:
        return m.words.say(
            "water.cannot", water.balance.liquid, degrees(water.balance.wanted, m), comes_to(water.balance, m)
        )
    said = [degrees(water.celsius.likely, m)]
    if (
        water.ice
        and whole_degrees(water.celsius.likely, m) < whole_degrees(water.around.tap, m)
        and to_fives(water.ice)
    ):
        said.append(m.words.say("water.ice", weight_of_ice(to_fives(water.ice), m)))
    return m.words.say("water.at_about", ", ".join(said))


def comes_to(balance: Balance, m: Measures) -> str:
    """`with all of the water ice it comes to about 29 °C`: what is had at the end of what can be."""
    hot = balance.water().likely > HOT_TAP
    end = HOT_TAP if hot else balance.coldest
    comes = degrees(balance.dough(end).likely, m)
    if balance.of_water and not hot:
        return m.words.say("water.all_ice", balance.liquid, comes)
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
