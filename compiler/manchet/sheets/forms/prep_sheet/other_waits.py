"""The yeast for another wait, in four lines: colder, as written, warmer, and longer."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Literal

from manchet.batch.work import Work
from manchet.figures.fermentation.yeast_grid import YeastGrid, yeast_grids
from manchet.formula.model import Range
from manchet.records import NamedTuple
from manchet.sheets.forms.prep_sheet.view import OtherWait, OtherWaits
from manchet.sheets.forms.prep_sheet.yeast_weights import YeastScale, finer_than_the_scale, yeast_scale, yeast_weight
from manchet.sheets.page.measures import Measures

STEP = {"C": Fraction(2), "F": Fraction(20, 9)}
"""Celsius between as written and colder or warmer: 2 C, or 4 F."""


class OtherYeast(NamedTuple):
    """Grams of the yeast for one other wait."""

    how: Literal["colder", "as written", "warmer", "longer", "shorter"]
    seconds: Range
    celsius: Range
    grams: Fraction


def other_waits(work: Work, m: Measures) -> tuple[OtherWaits, ...]:
    """For each wait that its own yeast raises alone; none where the model is silent on all but the written one."""
    found = (_of_grid(grid, work, m) for grid in yeast_grids(work, STEP[m.house.degrees]))
    return tuple(waits for waits in found if len(waits.waits) > 1)


def _of_grid(grid: YeastGrid, work: Work, m: Measures) -> OtherWaits:
    wait, words = grid.wait, m.words
    four = tuple(_four(grid))
    grams = [one.grams for one in four]
    scale = yeast_scale(grams, work.kitchen, m)
    stage = wait.stage.name or words["kinds." + wait.stage.word]
    if wait.branch:
        stage = words.say("waits.branch", stage, wait.branch)
    notes = (
        finer_than_the_scale(grams, scale, grid, m),
        words.say("waits.each_bowl", str(grid.makings)) if grid.makings > 1 else "",
        words["wait.carries_on"] if wait.carries_on else "",
        words["waits.estimate"],
    )
    return OtherWaits(
        words.say("wait.of_both", stage) if len(wait.waits) > 1 else stage,
        wait.portion.name,
        tuple(_said(one, scale, m) for one in four),
        tuple(filter(None, notes)),
    )


def _said(one: OtherYeast, scale: YeastScale, m: Measures) -> OtherWait:
    said = m.words["waits." + one.how.replace(" ", "_")]
    return OtherWait(one.how, said, m.time(one.seconds), m.degrees(one.celsius), yeast_weight(one.grams, scale, m))


def _four(grid: YeastGrid) -> Iterator[OtherYeast]:
    """As written between its neighbours in warmth, and the next longer time, or else the next shorter."""
    written = next(n for n, row in enumerate(grid.rows) if any(cell.written for cell in row.cells))
    row, after, before = grid.rows[written], grid.rows[written + 1 : written + 2], grid.rows[written - 1 : written]
    at = next(n for n, cell in enumerate(row.cells) if cell.written)
    ways: tuple[tuple[Literal["colder", "as written", "warmer"], int], ...]
    ways = (("colder", at - 1), ("as written", at), ("warmer", at + 1))
    for how, n in ways:
        if (grams := row.cells[n].grams) is not None:
            yield OtherYeast(how, row.seconds, grid.celsius[n], grams)
    for other in after or before:
        if (grams := other.cells[at].grams) is not None:
            yield OtherYeast("longer" if after else "shorter", other.seconds, grid.celsius[at], grams)
