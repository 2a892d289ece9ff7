"""The yeast for another wait, in four lines: a colder night, as written, a warmer night, another hour."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.scales import reading_of
from manchet.batch.work import Work
from manchet.figures.fermentation.yeast_grid import YeastGrid, YeastGridCell, YeastGridRow, yeast_grids
from manchet.formula.model import Range
from manchet.quantities.printing import round_to
from manchet.sheets.forms.prep_sheet.view import OtherWait, OtherWaits
from manchet.sheets.page.measures import Measures

STEP = {"C": Fraction(2), "F": Fraction(20, 9)}
"""Celsius between as written and a colder or a warmer night: 2 C, or 4 F."""


def other_waits(work: Work, m: Measures) -> tuple[OtherWaits, ...]:
    """For each wait that its own yeast raises alone; none where the model is silent on all but the written one."""
    found = (_of_grid(grid, work, m) for grid in yeast_grids(work, STEP[m.house.degrees]))
    return tuple(waits for waits in found if len(waits.waits) > 1)


def _of_grid(grid: YeastGrid, work: Work, m: Measures) -> OtherWaits:
    wait, words = grid.wait, m.words
    stage = wait.stage.name or words["kinds." + wait.stage.word]
    return OtherWaits(
        words.say("wait.of_both", stage) if len(wait.waits) > 1 else stage,
        wait.portion.name,
        tuple(_four(grid, work, m)),
        (*((words["wait.carries_on"],) if wait.carries_on else ()), words["waits.estimate"]),
    )


def _four(grid: YeastGrid, work: Work, m: Measures) -> Iterator[OtherWait]:
    written = next(n for n, row in enumerate(grid.rows) if any(cell.written for cell in row.cells))
    middle = next(n for n, cell in enumerate(grid.rows[written].cells) if cell.written)
    row = grid.rows[written]
    yield from _line("colder", row, middle - 1, grid, work, m)
    yield from _line("as written", row, middle, grid, work, m)
    yield from _line("warmer", row, middle + 1, grid, work, m)
    longer = grid.rows[written + 1 : written + 2] or grid.rows[written - 1 : written]
    for other in longer:
        yield from _line("another hour", other, middle, grid, work, m)


def _line(how: str, row: YeastGridRow, at: int, grid: YeastGrid, work: Work, m: Measures) -> Iterator[OtherWait]:
    cell: YeastGridCell = row.cells[at]
    if cell.grams is None:
        return
    said = m.words["waits." + how.replace(" ", "_")]
    degrees: Range = grid.celsius[at]
    yield OtherWait(how, said, m.time(row.seconds), m.degrees(degrees), _weight(cell.grams, work, m))  # type: ignore[arg-type]


def _weight(grams: Fraction, work: Work, m: Measures) -> str:
    """As the kitchen's scale reads it, in three digits at most: an estimate is no finer."""
    step = max(reading_of(grams, work.kitchen, m.system).step, _third_digit(grams))
    return m.small_grams(round_to(grams / step, 0) * step, step)


def _third_digit(grams: Fraction) -> Fraction:
    return Fraction(1) if grams >= 100 else Fraction(1, 10) if grams >= 10 else Fraction(1, 100)
