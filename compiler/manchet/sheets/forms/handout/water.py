"""How warm the water is to be at home, where nobody has a table of it."""

from __future__ import annotations

from manchet.figures.water.mix_inputs import HOTTER
from manchet.figures.water.stage_water import StageWater
from manchet.figures.water.water_grid import HOT_TAP
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.water import comes_to, degrees


def home_water(water: StageWater | None, m: Measures) -> tuple[str, ...]:
    """`water about 24 °C (room and flour at 21 °C)`, for a handout; () where nothing is to be said."""
    if water is None:
        return ()
    room, flour = (degrees(celsius, m) for celsius in (water.around.air, water.around.flour))
    if room == flour:
        taken = m.words.say("handout.room_and_flour", room)
    else:
        taken = m.words.say("handout.room_flour", room, flour)
    for thing in water.balance.rest:
        if thing.portion.stage and thing.celsius - water.around.air >= HOTTER:
            taken = m.words.say("handout.with_stage", taken, thing.portion.name, degrees(thing.celsius, m))
    if not water.balance.coldest <= water.celsius.likely <= HOT_TAP:
        name, wanted = water.balance.liquid, degrees(water.balance.wanted, m)
        return (m.words.say("handout.water_none", name, wanted, comes_to(water.balance, m), taken),)
    if water.celsius.likely < 0:
        return (m.words.say("handout.water_ice", water.balance.liquid, taken),)
    return (m.words.say("handout.water", water.balance.liquid, degrees(water.celsius.likely, m), taken),)
