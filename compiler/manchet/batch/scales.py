"""How a scale reads an amount: the kitchen's scales, or assumed ones, and the units a whole sheet is printed in."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from math import ceil

from manchet.batch.dilution import nearest
from manchet.kitchen.model import Kitchen, Scale
from manchet.records import NamedTuple

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


ASSUMED = (Scale("", Fraction(1)), Scale("", Fraction(1, 10), Fraction(20)))

OUNCE_STEPS = (OUNCE / 4, OUNCE / 2, OUNCE)
"""What a scale shows in ounces as they are printed."""

LIGHT = 8 * OUNCE - OUNCE / 200
"""Grams up to which a house of pounds weighs in grams: a quarter of an ounce is a thirtieth of it. Our own rule."""


def scales_of(kitchen: Kitchen, system: System) -> tuple[Scale, ...]:
    """The kitchen's scales, or the assumed ones.

    In US customary units the coarsest shows the next coarser of 1/4, 1/2 and 1 oz, and every one reads grams up to half
    a pound, as it does in any house: what is printed in grams is rounded in grams.
    """
    scales = kitchen.scales or ASSUMED
    if system is System.METRIC:
        return scales
    coarsest = max(scales, key=lambda s: s.reads)
    in_ounces = coarsest._replace(reads=next((o for o in OUNCE_STEPS if o >= coarsest.reads), OUNCE))
    in_grams = (s._replace(up_to=min(s.up_to or LIGHT, LIGHT)) for s in scales if s.reads < in_ounces.reads)
    return (in_ounces, *in_grams)


def in_ounces(step: Fraction, system: System) -> bool:
    """Whether what a scale shows to so many grams is read in ounces."""
    return system is System.US and step >= OUNCE_STEPS[0]


COARSELY, FINELY = 20, 50
"""To what part of itself a row is read: a twentieth, but salt and yeast to a fiftieth. Our own rule."""


def reading_of(grams: Fraction, kitchen: Kitchen, system: System = System.METRIC, part: int = FINELY) -> Reading:
    """The amount on the scale for it: the coarsest that reads to so small a `part` of it, else the finest that can hold it.

    In quarter ounces this is the rule of the US Armed Forces Recipe Service (TM 10-412, card A-1): .00-.12 is nothing,
    .13-.37 a quarter, and so on.
    """
    scales = scales_of(kitchen, system)
    holding = [s for s in scales if s.up_to is None or s.up_to >= grams]
    if not holding:
        scale = max(scales, key=lambda s: s.up_to or Fraction(0))
        goes = ceil(grams / scale.up_to) if scale.up_to else 1
        return Reading(nearest(grams, scale.reads), scale.reads, scale.name, goes)
    coarse = [s for s in holding if s.reads * part <= grams]
    scale = max(coarse, key=lambda s: s.reads) if coarse else min(holding, key=lambda s: s.reads)
    return Reading(nearest(grams, scale.reads), scale.reads, scale.name, 1)


def row_reading(grams: Fraction, kitchen: Kitchen, system: System, part: int) -> Reading:
    """The same as it stands in a row: on a scale that is not the coarsest of the house with three digits at most."""
    reading = reading_of(grams, kitchen, system, part)
    if reading.step >= max(scale.reads for scale in scales_of(kitchen, system)):
        return reading
    step = max(reading.step, _third_digit(grams))
    return reading._replace(grams=nearest(grams, step), step=step)


def _third_digit(grams: Fraction) -> Fraction:
    """The worth of a figure's third digit, in grams: 1 g for 156 g of salt, 0.1 g for 22.4 g of zest. Our own rule."""
    digit = Fraction(1)
    if grams <= 0:
        return Fraction(0)
    while grams < 100 * digit:
        digit /= 10
    while grams >= 1000 * digit:
        digit *= 10
    return digit
