"""The water of a dough on the sheet: base temperature first, then the figure, then what it is in another night's warmth."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.stage_water import StageWater
from manchet.figures.water_grid import Cell, Water
from manchet.formula.model import Range
from manchet.quantities.printing import rounded
from manchet.sheets import views
from manchet.sheets.measures import NBSP, Measures

STEP = {"C": Fraction(4), "F": Fraction(40, 9)}
"""Celsius between two lines of the grid: 4 C, or 8 F."""


def water_view(water: Water, m: Measures) -> views.Water:
    words, name = m.words, water.liquid
    others = [water.flour, water.room] if water.preferment is None else [water.flour, water.room, water.preferment]
    base = sum((_whole(reading, m) for reading in (water.celsius.likely, *others)), Fraction(0))
    base_text = _said(base, m)
    rule = "water.rule" if water.preferment is None else "water.rule_preferment"
    iced = any(_ice(cell, water, m) for row in water.grid for cell in row.cells)
    bowl = words.say("water.ice_is_part", name) if iced else ""
    return views.Water(
        base=base_text,
        rule=words.say(rule, name, base_text),
        liquid=name,
        figure=_figure(water, m) if water.assumed else "",
        assumed=_assumed(water, m) if water.assumed else "",
        rooms=tuple(_degrees(cell.room, m) for cell in water.grid[0].cells) if water.grid else (),
        rows=tuple(
            views.WaterRow(_degrees(row.flour, m), tuple(_cell(cell, water, m) for cell in row.cells))
            for row in water.grid
        ),
        notes=tuple(note for note in (bowl, words["water.estimate"]) if note),
    )


def stage_water(water: StageWater, m: Measures) -> str:
    """`at about 27 °C`, for what is mixed before the dough; with the ice in it, or that it cannot be."""
    if not water.can_be:
        return m.words["water.cannot"]
    said = [_degrees(water.celsius.likely, m)]
    if water.ice and _whole(water.celsius.likely, m) < _whole(water.around.tap, m) and _to_fives(water.ice):
        said.append(m.words.say("water.ice", m.mass(_to_fives(water.ice))))
    return m.words.say("water.at_about", ", ".join(said))


def _figure(water: Water, m: Measures) -> str:
    here = water.grid[len(water.grid) // 2]
    cell = _cell(here.cells[len(here.cells) // 2], water, m)
    said = ", ".join(part for part in (cell.figure, cell.ice) if part)
    return m.words.say("water.about", said)


def _assumed(water: Water, m: Measures) -> str:
    low, high = (max(end, water.balance.coldest) for end in (water.celsius.low, water.celsius.high))
    return m.words.say(
        "water.assumed", _said(_whole(low, m), m, _whole(high, m)), _degrees(water.flour, m), _degrees(water.room, m)
    )


def _cell(cell: Cell, water: Water, m: Measures) -> views.WaterCell:
    """`12 °C`; with ice `8 °C` and `72 g ice`; below freezing the ice alone says it."""
    if not cell.can_be:
        return views.WaterCell(m.words["water.too_warm"], "")
    ice = _ice(cell, water, m)
    return views.WaterCell("" if ice and cell.celsius < 0 else _degrees(cell.celsius, m), ice)


def _ice(cell: Cell, water: Water, m: Measures) -> str:
    """To 5 g, an estimate being no finer; where the tap is too warm by a degree that a thermometer shows."""
    ice = _to_fives(cell.ice or Fraction(0))
    if not ice or water.tap is None or _whole(cell.celsius, m) >= _whole(water.tap, m):
        return ""
    return m.words.say("water.ice", m.mass(ice))


def _to_fives(grams: Fraction) -> Fraction:
    return rounded(grams / 5, 0) * 5


def _whole(celsius: Fraction, m: Measures) -> Fraction:
    """To the whole degree that the house reads."""
    return rounded(celsius * 9 / 5 + 32 if m.house.degrees == "F" else celsius, 0)


def _degrees(celsius: Fraction, m: Measures) -> str:
    return _said(_whole(celsius, m), m)


def _said(low: Fraction, m: Measures, high: Fraction | None = None) -> str:
    """Whole degrees of the house, with their unit."""
    return f"{m.plain(Range(low, low if high is None else high), 0)}{NBSP}{m.degree()}"
