"""An amount too small to weigh, weighed after all: stir a weighable amount into water or flour, and use part of it."""

from __future__ import annotations

from fractions import Fraction

from manchet.quantities.printing import round_to
from manchet.records import NamedTuple


class Dilution(NamedTuple):
    """Stir `dissolve` grams into `into` grams of `carrier`, and use `use` grams of that.

    `use` brings `brings` grams of the ingredient; the rest of it is carrier, and is taken off the carrier's own line.
    """

    dissolve: Fraction
    into: Fraction
    carrier: str
    use: Fraction
    brings: Fraction

    @property
    def carried(self) -> Fraction:
        """Grams of the carrier that come with it."""
        return self.use - self.brings


RATIOS = (10, 20, 25, 40, 50, 100, 200)
"""How many times the dissolved amount the whole weighs."""

CLOSE_ENOUGH = Fraction(2, 100)

LEAST_READINGS = 20
"""The part to use is at least so many readings: half a reading is then 2.5 % of it."""

READINGS = 10
"""So many readings of it are dissolved: the scale errs by a twentieth at most."""

READINGS_OF_SPICE = 2
"""Nobody stirs up ten grams of saffron, and a quarter more or less of a spice spoils no dough."""


def dilution_of(
    grams: Fraction, reads: Fraction, carrier: str, carrier_grams: Fraction, readings: int = READINGS
) -> Dilution | None:
    """A dilution for `grams` of something on a scale that reads to `reads` grams, in what the stage has of a carrier.

    So many `readings` of it are dissolved; the whole is the smallest round multiple of that from which the part to use
    is twenty readings or more and comes to within 2 % (our own rule). The carrier makes the whole up to the round weight: 1 g in 99 g, not in 100 g, so that the share is exact. None if
    the stage has too little of the carrier, or the amount is too small even so.
    """
    dissolve = readings * reads
    for ratio in RATIOS:
        use = nearest(grams * ratio, reads)
        brings = use / ratio
        if (
            use >= LEAST_READINGS * reads
            and abs(brings - grams) <= CLOSE_ENOUGH * grams
            and use - brings <= carrier_grams
        ):
            return Dilution(dissolve, dissolve * (ratio - 1), carrier, use, brings)
    return None


def nearest(grams: Fraction, step: Fraction) -> Fraction:
    """The nearest whole number of steps; a half goes up."""
    return round_to(grams / step, 0) * step
