"""The yeast that moves a wait, on the timing card: hours by degrees, in the weight that the bench weighs today."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.figures.yeast_grid import Cell, YeastGrid
from manchet.formula.weighing import System, reading_of
from manchet.larder.kitchen import Kitchen
from manchet.quantities.printing import rounded
from manchet.sheets.measures import OUNCE, Measures
from manchet.sheets.wait_values import YeastCell, YeastRow, YeastTable

STEP = {"C": Fraction(2), "F": Fraction(20, 9)}
"""Celsius between two columns: 2 C, or 4 F."""


def yeast_table(grid: YeastGrid, kitchen: Kitchen, m: Measures) -> YeastTable:
    words, wait = m.words, grid.wait
    together = len(wait.waits) > 1
    where = wait.stage.name or words["kinds." + wait.stage.word]
    if wait.branch:
        where = words.say("yeast.branch", where, wait.branch)
    return YeastTable(
        title=words.say("yeast.together" if together else "yeast.title", where, wait.portion.name),
        degrees=tuple(m.degrees(celsius) for celsius in grid.celsius),
        rows=tuple(
            YeastRow(m.time(row.seconds), tuple(_cell(cell, grid, kitchen, m) for cell in row.cells))
            for row in grid.rows
        ),
        note=" ".join(_notes(grid, m)),
    )


def _notes(grid: YeastGrid, m: Measures) -> Iterator[str]:
    if grid.makings > 1:
        yield m.words.say("yeast.each_bowl", str(grid.makings))
    if grid.wait.carries_on:
        yield m.words["yeast.carries_on"]


def _cell(cell: Cell, grid: YeastGrid, kitchen: Kitchen, m: Measures) -> YeastCell:
    if cell.times is None or cell.grams is None:
        return YeastCell("", "", False)
    percent = grid.wait.portion.percent
    share = None if percent is None else percent / 100 * cell.times
    said = "" if share is None else m.percent(share if cell.written else _two_digits(share))
    return YeastCell(_weight(cell.grams, kitchen, m), said, cell.written)


def _two_digits(share: Fraction) -> Fraction:
    """An estimate has no more than two digits that count."""
    places = next((n for n in range(12) if share * 10**n >= 10), 12)
    return rounded(share, places)


def _weight(grams: Fraction, kitchen: Kitchen, m: Measures) -> str:
    """As the kitchen's scale reads it; where no scale can, to the hundredth of a gram (the sheet has a dilution then)."""
    reading = reading_of(grams, kitchen, System.US if m.house.units == "US" else System.METRIC)
    if reading.grams:
        return str(m.weight(reading.grams, reading.step))
    return str(m.weight(grams, OUNCE / 1000 if m.house.units == "US" else Fraction(1, 100)))
