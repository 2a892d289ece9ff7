"""The yeast for other waits in weights that tell them apart, and how they are weighed where the scale is too coarse."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.dilution import LEAST_READINGS, RATIOS, READINGS
from manchet.batch.scales import reading_of
from manchet.figures.fermentation.yeast_grid import YeastGrid
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.sheets.page.measures import Measures

TELLING = 10
"""Readings of its scale that the smallest weight of a table has to have: fewer, and neighbours come out alike. Our rule."""


class YeastScale(NamedTuple):
    """One way for all weights of a table: to `step` grams, whether or not the scale shows that."""

    step: Fraction
    on_the_scale: bool
    reads: Fraction
    """What the scale reads, grams."""


def yeast_scale(weights: Sequence[Fraction], kitchen: Kitchen, m: Measures) -> YeastScale:
    """As the kitchen's scales read the smallest; where that is too few readings, finer, in figures that tell."""
    least = min(weights, default=Fraction(1))
    reads = reading_of(least, kitchen, m.system).step
    if least >= TELLING * reads:
        return YeastScale(reads, True, reads)
    return YeastScale(Fraction(1, 10) if least >= 1 else Fraction(1, 100), False, reads)


def yeast_weight(grams: Fraction, scale: YeastScale, m: Measures) -> str:
    """In grams in any house, as on a fine scale; in three digits at most: an estimate is no finer."""
    step = max(scale.step, _third_digit(grams))
    rounded = round_to(grams / step, 0) * step
    return m.small_grams(rounded, step)


def _third_digit(grams: Fraction) -> Fraction:
    return Fraction(1) if grams >= 100 else Fraction(1, 10) if grams >= 10 else Fraction(1, 100)


def finer_than_the_scale(weights: Sequence[Fraction], scale: YeastScale, grid: YeastGrid, m: Measures) -> str:
    """What is stirred into what, and how much of that is taken for each gram; "" where the scale shows the weights."""
    if scale.on_the_scale or not weights:
        return ""
    reads = str(m.in_grams(scale.reads, scale.reads))
    written = next(cell.grams for row in grid.rows for cell in row.cells if cell.written and cell.grams)
    of_water = (p.share for p in grid.wait.stage.portions if p.ingredient and p.ingredient.class_ == "water")
    water = sum(of_water, Fraction(0)) * written / grid.wait.share
    ratio = next((r for r in RATIOS if min(weights) * r >= LEAST_READINGS * scale.reads), RATIOS[-1])
    dissolve = READINGS * scale.reads
    if max(weights) * ratio > water:
        return m.words.say("waits.not_shown", reads)
    return m.words.say("waits.dilute", reads, m.grams(dissolve), m.grams(dissolve * (ratio - 1)), str(ratio))
