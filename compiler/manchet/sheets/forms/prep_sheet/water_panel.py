"""The water of a dough on the sheet: base temperature first, then the figure, then what it is in another night's warmth."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.limits.lookup import limit
from manchet.figures.water.dough_temperature import capacity
from manchet.figures.water.ice import ice_in
from manchet.figures.water.mix_inputs import MixInput
from manchet.figures.water.mix_temperature import dough_balance
from manchet.figures.water.water_grid import BOILING, HOT_TAP, DoughWater, WaterGridCell, water_grid
from manchet.figures.water.way_out import WayOut, misses, way_out, way_out_with_water
from manchet.formula.model import Range
from manchet.quantities.printing import round_to
from manchet.sheets.forms.prep_sheet.view import HotStage, WaterCell, WaterPanel, WaterRow
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.dough_ice import grams_of_ice
from manchet.sheets.parts.water import comes_to, degrees, degrees_between, to_fives, weight_of_ice, whole_degrees

APART = {"C": Fraction(5), "F": Fraction(10)}
"""Degrees of the house for which it is said what a hotter stage does to the water."""


STEP = {"C": Fraction(4), "F": Fraction(40, 9)}
"""Degrees Celsius between the rows and columns of the grid of the water's heat: four, or eight of Fahrenheit."""


def water_panel(water: DoughWater, work: Work, m: Measures) -> WaterPanel:
    grid = water_grid(work, STEP[m.house.degrees])
    words, name = m.words, water.liquid
    others = [water.flour, water.room] if water.preferment is None else [water.flour, water.room, water.preferment]
    base = sum((whole_degrees(reading, m) for reading in (water.celsius.likely, *others)), Fraction(0))
    base_text = degrees_between(base, m)
    rule = "water.rule" if water.preferment is None else "water.rule_preferment"
    iced = any(_ice(cell, water, m) for row in grid for cell in row.cells)
    bowl = words.say("water.ice_is_part", name) if iced else ""
    return WaterPanel(
        rule=_rule(words.say(rule, name, base_text), water, m) if water.can_be and water.celsius.likely >= 0 else "",
        liquid=name,
        figure=_figure(water.here, water, m) if water.here is not None else "",
        flour=degrees(water.flour, m) if water.assumed else "",
        room=degrees(water.room, m) if water.assumed else "",
        spread=_spread(water, m) if water.assumed else "",
        rooms=tuple(degrees(cell.room, m) for cell in grid[0].cells) if grid else (),
        rows=tuple(
            WaterRow(degrees(row.flour, m), tuple(_cell(cell, row.flour, water, m) for cell in row.cells))
            for row in grid
        ),
        notes=tuple(note for note in (_by_friction(water, m), bowl, words["water.estimate"]) if note),
        hot=tuple(_hot(thing, water, m) for thing in water.hot),
    )


def _rule(said: str, water: DoughWater, m: Measures) -> str:
    """Where the balance leads, the rule is true of the readings that it was made at: further off the room counts for less."""
    return said if water.friction is not None or not water.assumed else m.words.say("water.near_these", said)


def _by_friction(water: DoughWater, m: Measures) -> str:
    """`By the rule, with the mixer's friction of 8 °F in the sum.`; "" where the balance leads."""
    said = water.friction
    if said is None:
        return ""
    figure = said.celsius if m.house.degrees == "C" else said.celsius * 9 / 5
    word = "water.friction_in_the_sum" if said.in_the_sum else "water.friction_of_the_dough"
    return m.words.say(word, f"{m.plain(Range(figure, figure), 1)}{NBSP}{m.degree()}")


def standing_panel(work: Work, m: Measures) -> WaterPanel | None:
    """For a dough none of whose liquid can be warmed or cooled: how warm it comes out, and what to do where that is not as
    wanted. None where the kitchen says no warmth."""
    balance, within = dough_balance(work), limit("dough-temperature-within")
    if balance is None or balance.free or within is None:
        return None
    out = balance.dough().likely
    said = m.words.say("water.comes_out", degrees(out, m))
    if misses(balance, within):
        said = m.words.say("water.reached", said, _way_out(way_out(balance), out > balance.wanted, m))
    return WaterPanel("", "", "", "", "", "", (), (), (said[0].upper() + said[1:] + ".", m.words["water.estimate"]))


def _way_out(out: WayOut | None, too_warm: bool, m: Measures) -> str:
    """`cool the scald to about 34 °C first, or write a warmer dough`."""
    if out is None:
        return m.words["water.way_out_colder" if too_warm else "water.way_out_warmer"]
    return m.words.say("water.cool_first" if out.cooler else "water.warm_first", out.name, degrees(out.celsius, m))


def hot_readings(water: DoughWater) -> list[str]:
    """What is read beside flour, room and preferment: the stages that go in hot."""
    return [thing.portion.name for thing in water.hot if thing.portion.stage not in water.preferments]


def _hot(thing: MixInput, water: DoughWater, m: Measures) -> HotStage:
    """`scald`: `taken at about 62 °C`; `57–67 °C as it cools (estimate); 5 °C warmer: water 2 °C colder`."""
    words, beside = m.words, []
    taken = "water.taken_about" if thing.ends else "water.taken"
    if thing.ends:
        beside.append(words.say("water.as_it_cools", _between(*thing.ends, m)))
    warmer = APART[m.house.degrees]
    colder = warmer * thing.capacity / capacity(water.balance.free)
    by = colder if m.house.degrees == "C" else colder * 5 / 9
    more_ice = to_fives(ice_in(water.grams, water.tap, water.tap - by)) if water.ice and water.tap is not None else 0
    if more_ice:
        beside.append(words.say("water.if_warmer_ice", degrees_between(warmer, m), m.mass(Fraction(more_ice))))
    elif round_to(colder, 0):
        beside.append(
            words.say(
                "water.if_warmer", degrees_between(warmer, m), water.liquid, degrees_between(round_to(colder, 0), m)
            )
        )
    return HotStage(thing.portion.name, words.say(taken, degrees(thing.celsius, m)), "; ".join(beside))


def _figure(here: WaterGridCell, water: DoughWater, m: Measures) -> str:
    if not here.can_be:
        return m.words["water.none_cold" if here.celsius < BOILING else "water.none_hot"]
    cell = _cell(here, water.flour, water, m)
    return " + ".join(part for part in (cell.figure, cell.ice) if part)


def _spread(water: DoughWater, m: Measures) -> str:
    """Between what the figure lies; where no liquid does it, what is reached and the way out."""
    balance, say = water.balance, m.words.say
    if not water.can_be:
        cold = water.celsius.likely < BOILING
        other = way_out_with_water(balance, water.tap) if cold else way_out(balance, HOT_TAP)
        return say("water.reached", comes_to(balance, m), _way_out(other, cold, m))
    if water.friction is not None and water.celsius.likely <= HOT_TAP:
        return ""
    low, high = (min(max(end, balance.coldest), BOILING) for end in (water.celsius.low, water.celsius.high))
    said = _ice_between(low, high, water, m) or _between(low, high, m)
    if water.celsius.likely <= HOT_TAP:
        return said
    return say("water.over_tap", said, comes_to(balance, m))


def _between(low: Fraction, high: Fraction, m: Measures) -> str:
    return degrees_between(whole_degrees(low, m), m, whole_degrees(high, m))


def _ice_between(low: Fraction, high: Fraction, water: DoughWater, m: Measures) -> str:
    """`430 g to 640 g`, where the figure is ice alone: degrees below freezing say nothing."""
    if not water.ice or water.tap is None or water.celsius.likely >= 0:
        return ""
    least, most = (min(to_fives(ice_in(water.grams, water.tap, end)), water.grams) for end in (high, low))
    return m.words.say("water.ice_between", m.mass(least), m.mass(most))


def _cell(cell: WaterGridCell, flour: Fraction, water: DoughWater, m: Measures) -> WaterCell:
    """`12 °C`; with ice `8 °C` and `72 g ice`; below freezing the ice alone says it."""
    assumed = (flour, cell.room) == (water.flour, water.room)
    if not cell.can_be:
        return WaterCell(m.words["water.too_warm" if cell.celsius < BOILING else "water.too_cold"], "", assumed)
    ice = _ice(cell, water, m)
    return WaterCell("" if ice and cell.celsius < 0 else degrees(cell.celsius, m), ice, assumed)


def _ice(cell: WaterGridCell, water: DoughWater, m: Measures) -> str:
    ice = grams_of_ice(cell, water, m)
    return m.words.say("water.ice", weight_of_ice(ice, m)) if ice else ""
