"""How fast a lump of dough, or of what goes into one, comes to the temperature of the air around it: an estimate.

It is taken as a cube. Heat leaves it through its own body and then through the air at its skin, one resistance after the
other, so that its distance from the air's temperature shrinks by the same share each minute. The share a slab needs for its
own body is 4/pi^2 of thickness^2 / conductivity (Incropera, Fundamentals of Heat and Mass Transfer, from memory).
"""

from __future__ import annotations

from bisect import bisect_left
from fractions import Fraction

from manchet.figures.estimate import Estimate
from manchet.quantities.printing import round_to

SPECIFIC = Fraction("2.8")
"""kJ/kg K, a dough of 65 % water: from flour 1.8 and water 4.19 (Geankoplis, appendix A.4)."""
CONDUCTS = Fraction("0.4")
"""W/m K of dough, from memory; published figures run from 0.3 to 0.5."""
DENSITY = Fraction(1100)
"""kg/m3 of dough that has not risen. Common practice."""
STILL, BLOWING = Fraction(5), Fraction(12)
"""W/m2 K at the skin: in still air, and before a fan. From memory, natural and light forced convection."""
SLICES = 60
"""Into how many pieces a wait is cut; more change no printed figure."""


def exactly(celsius: Fraction) -> Estimate:
    return Estimate(celsius, celsius, celsius)


def seconds_of_lag(grams: Fraction, skin: Fraction, specific: Fraction = SPECIFIC) -> Fraction:
    """The time in which the distance from the air's temperature would be gone, were it lost as fast as at first."""
    volume = grams / DENSITY * 1_000_000
    half = Fraction(bisect_left(range(10_000), volume, key=lambda mm: Fraction(mm**3)), 2000)
    return specific * 1000 * DENSITY * half / 3 * (1 / skin + Fraction("0.405") * half / CONDUCTS)


def after_standing(
    warmth: Estimate, seconds: Fraction, grams: Fraction, air: Fraction, specific: Fraction = SPECIFIC
) -> Estimate:
    """A hot thing after so long in the open, to whole degrees: between moving air and still, and likely halfway.

    What steams, and is stirred, loses heat as in moving air; what stands covered as in still.
    """
    low, high = (
        round_to(air + (end - air) * _left(seconds, seconds_of_lag(grams, skin, specific)), 0)
        for end, skin in ((warmth.low, BLOWING), (warmth.high, STILL))
    )
    return Estimate(round_to((low + high) / 2, 0), low, high)


def _left(seconds: Fraction, lag: Fraction) -> Fraction:
    """Of the distance from the air's temperature, what is left."""
    return round_to(lag / (lag + seconds / SLICES), 6) ** SLICES
