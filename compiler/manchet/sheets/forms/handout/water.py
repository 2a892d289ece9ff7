"""How warm the water is to be at home, where nobody has a table of it."""

from __future__ import annotations

from manchet.figures.water.mix_inputs import HOTTER
from manchet.figures.water.stage_water import StageWater
from manchet.figures.water.water_grid import HOT_TAP
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.water import comes_to, degrees


def home_water(water: StageWater | None, m: Measures) -> tuple[str, ...]:
    """`water at 24 °C if room and flour 21 °C`, for a handout; () where nothing is to be said."""
    if water is None:
        return ()
    room, flour = (degrees(celsius, m) for celsius in (water.around.air, water.around.flour))
    taken = m.words.say(
        "handout.room_and_flour" if room == flour else "handout.room_flour", *dict.fromkeys((room, flour))
    )
    for thing in water.balance.rest:
        if thing.portion.stage and thing.celsius - water.around.air >= HOTTER:
            taken = m.words.say("handout.with_stage", taken, thing.portion.name, degrees(thing.celsius, m))
    name = water.balance.liquid
    if not water.balance.coldest <= water.celsius.likely <= HOT_TAP:
        said = m.words.say("water.cannot", name, degrees(water.balance.wanted, m), comes_to(water.balance, m))
        return (m.words.say("handout.water_none", said, taken),)
    if water.celsius.likely < 0:
        return (m.words.say("handout.water_ice", name, taken),)
    return (m.words.say("handout.water", name, degrees(water.celsius.likely, m), taken),)
