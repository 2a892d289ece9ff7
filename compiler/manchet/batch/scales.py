"""How a scale reads an amount: the kitchen's scales, or assumed ones, and the units a whole sheet is printed in."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from math import ceil
from typing import NamedTuple

from manchet.batch.dilution import nearest
from manchet.kitchen.model import Kitchen, Scale

OUNCE = Fraction(45359237, 1600000)
"""Grams, exact (avoirdupois)."""


class System(Enum):
    """The units a whole sheet is printed in."""

    METRIC = "metric"
    US = "US customary"


class Reading(NamedTuple):
    """An amount as a scale shows it: a whole number of `step`s, in grams (a quarter ounce is exact too)."""

    grams: Fraction
    step: Fraction
    scale: str
    """The kitchen's name for the scale, "" for an assumed one."""
    goes: int
    """In how many goes, where the scale cannot hold it all; else 1."""


ASSUMED = {
    System.METRIC: (Scale("", Fraction(1)), Scale("", Fraction(1, 10), Fraction(20))),
    System.US: (Scale("", OUNCE / 4), Scale("", OUNCE / 100, 8 * OUNCE - OUNCE / 200)),
}

OUNCE_STEPS = tuple(OUNCE * Fraction(step) for step in ("0.005", "0.01", "0.05", "0.1", "0.25", "0.5", "1"))
"""What scales show in ounces."""


def scales_of(kitchen: Kitchen, system: System) -> tuple[Scale, ...]:
    """The kitchen's scales, or the assumed ones.

    In US customary units a scale that reads in grams is taken to show the next coarser of
    0.005, 0.01, 0.05, 0.1, 1/4, 1/2 and 1 oz (a scale that reads 1 g shows 0.05 oz).
    """
    if not kitchen.scales:
        return ASSUMED[system]
    if system is System.METRIC:
        return kitchen.scales
    return tuple(s._replace(reads=next((o for o in OUNCE_STEPS if o >= s.reads), OUNCE)) for s in kitchen.scales)


def reading_of(grams: Fraction, kitchen: Kitchen, system: System = System.METRIC) -> Reading:
    """The amount on the scale for it: the coarsest that reads to a fiftieth of it, else the finest that can hold it.

    So what rounding moves is at most a hundredth (our own rule): 497 g of flour is weighed on a scale that reads 5 g.

    In quarter ounces this is the rule of the US Armed Forces Recipe Service (TM 10-412, card A-1): .00-.12 is nothing,
    .13-.37 a quarter, and so on.
    """
    scales = scales_of(kitchen, system)
    holding = [s for s in scales if s.up_to is None or s.up_to >= grams]
    if not holding:
        scale = max(scales, key=lambda s: s.up_to or Fraction(0))
        goes = ceil(grams / scale.up_to) if scale.up_to else 1
        return Reading(nearest(grams, scale.reads), scale.reads, scale.name, goes)
    coarse = [s for s in holding if s.reads * 50 <= grams]
    scale = max(coarse, key=lambda s: s.reads) if coarse else min(holding, key=lambda s: s.reads)
    return Reading(nearest(grams, scale.reads), scale.reads, scale.name, 1)
