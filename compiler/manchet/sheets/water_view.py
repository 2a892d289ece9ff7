"""The water of a dough on the sheet: base temperature first, then the figure, then what it is in another night's warmth."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.water.dough_temperature import Balance, capacity
from manchet.figures.water.ice import ice_in
from manchet.figures.water.mix_inputs import HOTTER, MixInput
from manchet.figures.water.stage_water import StageWater
from manchet.figures.water.water_grid import BOILING, HOT_TAP, Cell, Water
from manchet.formula.model import Range
from manchet.quantities.printing import rounded
from manchet.sheets import water_values
from manchet.sheets.measures import NBSP, OUNCE, Measures

STEP = {"C": Fraction(4), "F": Fraction(40, 9)}
"""Celsius between two lines of the grid: 4 C, or 8 F."""

APART = {"C": Fraction(5), "F": Fraction(10)}
"""Degrees of the house for which it is said what a hotter stage does to the water."""


def water_view(water: Water, m: Measures) -> water_values.Water:
    words, name = m.words, water.liquid
    others = [water.flour, water.room] if water.preferment is None else [water.flour, water.room, water.preferment]
    base = sum((_whole(reading, m) for reading in (water.celsius.likely, *others)), Fraction(0))
    base_text = _said(base, m)
    rule = "water.rule" if water.preferment is None else "water.rule_preferment"
    iced = any(_ice(cell, water, m) for row in water.grid for cell in row.cells)
    bowl = words.say("water.ice_is_part", name) if iced else ""
    return water_values.Water(
        base=base_text,
        rule=words.say(rule, name, base_text),
        liquid=name,
        figure=_figure(water, m) if water.assumed else "",
        assumed=_assumed(water, m) if water.assumed else "",
        rooms=tuple(_degrees(cell.room, m) for cell in water.grid[0].cells) if water.grid else (),
        rows=tuple(
            water_values.WaterRow(_degrees(row.flour, m), tuple(_cell(cell, water, m) for cell in row.cells))
            for row in water.grid
        ),
        notes=tuple(note for note in (bowl, words["water.estimate"]) if note),
        hot=tuple(_hot(thing, water, m) for thing in water.hot),
    )


def hot_readings(water: Water) -> list[str]:
    """What is read beside flour, room and preferment: the stages that go in hot."""
    return [thing.portion.name for thing in water.hot if thing.portion.stage not in water.preferments]


def _hot(thing: MixInput, water: Water, m: Measures) -> water_values.Hot:
    """`scald`: `taken at about 62 °C`; `57–67 °C as it cools (estimate); 5 °C warmer: water 2 °C colder`."""
    words, beside = m.words, []
    taken = "water.taken_about" if thing.ends else "water.taken"
    if thing.ends:
        beside.append(words.say("water.as_it_cools", _between(*thing.ends, m)))
    warmer = APART[m.house.degrees]
    colder = warmer * thing.capacity / capacity(water.balance.free)
    by = colder if m.house.degrees == "C" else colder * 5 / 9
    more_ice = _to_fives(ice_in(water.grams, water.tap, water.tap - by)) if water.ice and water.tap is not None else 0
    if more_ice:
        beside.append(words.say("water.if_warmer_ice", _said(warmer, m), m.mass(Fraction(more_ice))))
    elif rounded(colder, 0):
        beside.append(words.say("water.if_warmer", _said(warmer, m), water.liquid, _said(rounded(colder, 0), m)))
    return water_values.Hot(thing.portion.name, words.say(taken, _degrees(thing.celsius, m)), "; ".join(beside))


def stage_water(water: StageWater, m: Measures) -> str:
    """`at about 27 °C`, for what is mixed before the dough; with the ice in it, or that it cannot be."""
    if not water.can_be:
        return m.words.say(
            "water.cannot", water.balance.liquid, _degrees(water.balance.wanted, m), _reached(water.balance, m)
        )
    said = [_degrees(water.celsius.likely, m)]
    if water.ice and _whole(water.celsius.likely, m) < _whole(water.around.tap, m) and _to_fives(water.ice):
        said.append(m.words.say("water.ice", _weight_of_ice(_to_fives(water.ice), m)))
    return m.words.say("water.at_about", ", ".join(said))


def home_water(water: StageWater | None, m: Measures) -> tuple[str, ...]:
    """`water about 24 °C (room and flour at 21 °C)`, for a handout; () where nothing is to be said."""
    if water is None:
        return ()
    room, flour = (_degrees(celsius, m) for celsius in (water.around.air, water.around.flour))
    if room == flour:
        taken = m.words.say("handout.room_and_flour", room)
    else:
        taken = m.words.say("handout.room_flour", room, flour)
    for thing in water.balance.rest:
        if thing.portion.stage and thing.celsius - water.around.air >= HOTTER:
            taken = m.words.say("handout.with_stage", taken, thing.portion.name, _degrees(thing.celsius, m))
    if not water.balance.coldest <= water.celsius.likely <= HOT_TAP:
        name, wanted = water.balance.liquid, _degrees(water.balance.wanted, m)
        return (m.words.say("handout.water_none", name, wanted, _reached(water.balance, m), taken),)
    if water.celsius.likely < 0:
        return (m.words.say("handout.water_ice", water.balance.liquid, taken),)
    return (m.words.say("handout.water", water.balance.liquid, _degrees(water.celsius.likely, m), taken),)


def _figure(water: Water, m: Measures) -> str:
    here = water.grid[len(water.grid) // 2]
    middle = here.cells[len(here.cells) // 2]
    if not middle.can_be:
        return m.words["water.none_cold" if middle.celsius < BOILING else "water.none_hot"]
    cell = _cell(middle, water, m)
    said = ", ".join(part for part in (cell.figure, cell.ice) if part)
    return m.words.say("water.about", said)


def _assumed(water: Water, m: Measures) -> str:
    """The figure's range, and at which flour and room; where no liquid does it, what is reached and the way out."""
    balance, say = water.balance, m.words.say
    flour, room = _degrees(water.flour, m), _degrees(water.room, m)
    if not balance.coldest <= water.celsius.likely < BOILING:
        out = "water.way_out_colder" if water.celsius.likely < BOILING else "water.way_out_warmer"
        return say("water.reached", _reached(balance, m), flour, room, m.words[out])
    low, high = (min(max(end, balance.coldest), BOILING) for end in (water.celsius.low, water.celsius.high))
    said = say("water.assumed", _ice_between(low, high, water, m) or _between(low, high, m), flour, room)
    if water.celsius.likely <= HOT_TAP:
        return said
    return say("water.over_tap", said, _reached(balance, m))


def _between(low: Fraction, high: Fraction, m: Measures) -> str:
    return _said(_whole(low, m), m, _whole(high, m))


def _ice_between(low: Fraction, high: Fraction, water: Water, m: Measures) -> str:
    """`430 g to 640 g`, where the figure is ice alone: degrees below freezing say nothing."""
    if not water.ice or water.tap is None or water.celsius.likely >= 0:
        return ""
    least, most = (min(_to_fives(ice_in(water.grams, water.tap, end)), water.grams) for end in (high, low))
    return m.words.say("water.ice_between", m.mass(least), m.mass(most))


def _reached(balance: Balance, m: Measures) -> str:
    """`with all of the water ice it comes to about 29 °C`: what is had at the end of what can be."""
    hot = balance.water().likely > HOT_TAP
    end = HOT_TAP if hot else balance.coldest
    comes = _degrees(balance.dough(end).likely, m)
    if balance.of_water and not hot:
        return m.words.say("water.all_ice", balance.liquid, comes)
    return m.words.say("water.with_liquid", balance.liquid, _degrees(end, m), comes)


def _cell(cell: Cell, water: Water, m: Measures) -> water_values.WaterCell:
    """`12 °C`; with ice `8 °C` and `72 g ice`; below freezing the ice alone says it."""
    if not cell.can_be:
        return water_values.WaterCell(m.words["water.too_warm" if cell.celsius < BOILING else "water.too_cold"], "")
    ice = _ice(cell, water, m)
    return water_values.WaterCell("" if ice and cell.celsius < 0 else _degrees(cell.celsius, m), ice)


def _ice(cell: Cell, water: Water, m: Measures) -> str:
    """To 5 g, an estimate being no finer; where the tap is too warm by a degree that a thermometer shows."""
    ice = _to_fives(cell.ice or Fraction(0))
    if not ice or water.tap is None or _whole(cell.celsius, m) >= _whole(water.tap, m):
        return ""
    return m.words.say("water.ice", _weight_of_ice(ice, m))


def _weight_of_ice(grams: Fraction, m: Measures) -> str:
    """In pounds to the quarter ounce, so that a table has one way of saying it."""
    return str(m.weight(max(grams, OUNCE / 4), OUNCE / 4)) if m.house.units == "US" else m.mass(grams)


def _to_fives(grams: Fraction) -> Fraction:
    return rounded(grams / 5, 0) * 5


def _whole(celsius: Fraction, m: Measures) -> Fraction:
    """To the whole degree that the house reads."""
    return rounded(m.reading(celsius), 0)


def _degrees(celsius: Fraction, m: Measures) -> str:
    return _said(_whole(celsius, m), m)


def _said(low: Fraction, m: Measures, high: Fraction | None = None) -> str:
    """Whole degrees of the house, with their unit."""
    return f"{m.plain(Range(low, low if high is None else high), 0)}{NBSP}{m.degree()}"
