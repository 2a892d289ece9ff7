"""The yeast for another wait: a colder and a warmer night, an hour less and more, in the weight that the bench weighs today."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.dilution import LEAST_READINGS, RATIOS, READINGS
from manchet.batch.scales import System, reading_of
from manchet.figures.fermentation.yeast_grid import YeastGrid
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.sheets.forms.timing_card.view import YeastCell, YeastLine
from manchet.sheets.page.measures import Measures

STEP = {"C": Fraction(2), "F": Fraction(20, 9)}
"""Celsius between two columns: 2 C, or 4 F."""


TELLING = 10
"""Readings of its scale that the smallest weight of a table has to have: fewer, and neighbours come out alike. Our rule."""


class _Rounding(NamedTuple):
    """One way for all weights of a table: to `step` grams, whether or not the scale shows that."""

    step: Fraction
    on_the_scale: bool
    scale: Fraction
    """What the scale reads, grams."""


def yeast_line(grid: YeastGrid, kitchen: Kitchen, m: Measures) -> YeastLine:
    words, wait, rounding = m.words, grid.wait, _rounding(grid, kitchen, m)
    where = wait.stage.name or words["kinds." + wait.stage.word]
    if wait.branch:
        where = words.say("yeast.branch", where, wait.branch)
    together = len(wait.waits) > 1
    return YeastLine(
        title=words.say("yeast.together" if together else "yeast.title", where, wait.portion.name),
        cells=tuple(_cells(grid, rounding, m)),
        note=" ".join(_notes(grid, rounding, m)),
    )


def _cells(grid: YeastGrid, rounding: _Rounding, m: Measures) -> Iterator[YeastCell]:
    """As written, its neighbours in warmth, and the other hours at the written warmth."""
    written = next((row for row in grid.rows if any(cell.written for cell in row.cells)), None)
    if written is None:
        return
    at = next(n for n, cell in enumerate(written.cells) if cell.written)
    hours = m.time(written.seconds)
    for n, word in ((at - 1, "yeast.colder"), (at, "yeast.written"), (at + 1, "yeast.warmer")):
        if 0 <= n < len(written.cells) and (grams := written.cells[n].grams):
            said = m.words[word] if n == at else m.words.say(word, hours, m.degrees(grid.celsius[n]))
            yield YeastCell(said, _weight(grams, rounding, m), n == at)
    for row in grid.rows:
        if row is not written and (grams := row.cells[at].grams):
            yield YeastCell(m.time(row.seconds), _weight(grams, rounding, m), False)


def _weights(grid: YeastGrid) -> list[Fraction]:
    """Those that are printed."""
    at = next((n for row in grid.rows for n, cell in enumerate(row.cells) if cell.written), 0)
    told = (
        cell
        for row in grid.rows
        for n, cell in enumerate(row.cells)
        if n == at or (abs(n - at) == 1 and row.cells[at].written)
    )
    return [cell.grams for cell in told if cell.grams]


def _rounding(grid: YeastGrid, kitchen: Kitchen, m: Measures) -> _Rounding:
    """As the kitchen's scales read the smallest; where that is too few readings, finer, in figures that tell."""
    least = min(_weights(grid), default=Fraction(1))
    scale = reading_of(least, kitchen, System.US if m.house.units == "US" else System.METRIC).step
    if least >= TELLING * scale:
        return _Rounding(scale, True, scale)
    return _Rounding(Fraction(1, 10) if least >= 1 else Fraction(1, 100), False, scale)


def _way_out(grid: YeastGrid, rounding: _Rounding, m: Measures) -> str:
    """For weights that the scale does not show: what is stirred into what, and how much of that is taken for each gram."""
    scale, told = str(m.weight(rounding.scale, rounding.scale)), _weights(grid)
    written = next(cell.grams for row in grid.rows for cell in row.cells if cell.written and cell.grams)
    of_water = (p.share for p in grid.wait.stage.portions if p.ingredient and p.ingredient.class_ == "water")
    water = sum(of_water, Fraction(0)) * written / grid.wait.share
    ratio = next((r for r in RATIOS if min(told) * r >= LEAST_READINGS * rounding.scale), RATIOS[-1])
    dissolve = READINGS * rounding.scale
    if max(told) * ratio > water:
        return m.words.say("yeast.not_shown", scale)
    into = m.grams(dissolve * (ratio - 1))
    return m.words.say("yeast.dilute", scale, m.grams(dissolve), into, str(ratio))


def _notes(grid: YeastGrid, rounding: _Rounding, m: Measures) -> Iterator[str]:
    if not rounding.on_the_scale and _weights(grid):
        yield _way_out(grid, rounding, m)
    if grid.makings > 1:
        yield m.words.say("yeast.each_bowl", str(grid.makings))
    if grid.wait.carries_on:
        yield m.words["wait.carries_on"]


def _weight(grams: Fraction, rounding: _Rounding, m: Measures) -> str:
    """As the kitchen's scale reads it; in grams in any house where the scale cannot show it."""
    if rounding.on_the_scale:
        return str(m.weight(round_to(grams / rounding.step, 0) * rounding.step, rounding.step))
    return m.small_grams(grams, rounding.step)
