"""How fast a tub of dough grows cold in the fridge: the middle of it, an estimate between a still and a blowing fridge.

The dough is taken as a cube. Heat leaves it through its own body and then through the air at its skin, one resistance
after the other, so that its distance from the fridge's temperature shrinks by the same share each minute. The share a
slab needs for its own body is 4/pi^2 of thickness^2 / conductivity (Incropera, Fundamentals of Heat and Mass Transfer,
from memory). The heat the yeast makes is left out.
"""

from __future__ import annotations

from bisect import bisect_left
from fractions import Fraction
from typing import NamedTuple

from manchet.figures.yeast_rate import NOTHING, Leaven, pace
from manchet.quantities.printing import rounded

SPECIFIC = Fraction("2.8")
"""kJ/kg K, a dough of 65 % water: from flour 1.8 and water 4.19 (Geankoplis, appendix A.4)."""
CONDUCTS = Fraction("0.4")
"""W/m K of dough, from memory; published figures run from 0.3 to 0.5."""
DENSITY = Fraction(1100)
"""kg/m3 of dough that has not risen. Common practice."""
STILL, BLOWING = Fraction(5), Fraction(12)
"""W/m2 K at the skin: in a still fridge, and before a fan. From memory, natural and light forced convection."""
STEP = Fraction(600)
"""Seconds of one step of the reckoning."""
LONGEST = 48 * 6
"""Steps after which a dough counts as cold."""


class Cooling(NamedTuple):
    """The middle of the dough at each step of ten minutes, Celsius: fastest and slowest."""

    fast: tuple[Fraction, ...]
    slow: tuple[Fraction, ...]

    def seconds_to(self, celsius: Fraction) -> tuple[Fraction, Fraction | None] | None:
        """From when to when the middle is as cold as that. None: not within two days (second: not if slow)."""
        soon, late = (next((n * STEP for n, t in enumerate(c) if t <= celsius), None) for c in (self.fast, self.slow))
        return None if soon is None else (soon, late)

    def work(self, leaven: Leaven, seconds: Fraction) -> tuple[Fraction, Fraction]:
        """What the leaven does in the first so many seconds, as seconds at the temperature the dough came with."""
        steps = int(seconds / STEP)
        least, most = (sum((pace(leaven, t) for t in c[:steps]), NOTHING) for c in (self.fast, self.slow))
        full = pace(leaven, self.fast[0])
        return (least * STEP / full, most * STEP / full) if full else (NOTHING, NOTHING)


def cooling(grams: Fraction, start: Fraction, fridge: Fraction) -> Cooling:
    """A tub of so many grams of dough, put into the fridge at `start`."""
    return Cooling(_curve(grams, start, fridge, BLOWING), _curve(grams, start, fridge, STILL))


def seconds_of_lag(grams: Fraction, skin: Fraction) -> Fraction:
    """The time in which the distance from the fridge's temperature would be gone, were it lost as fast as at first."""
    volume = grams / DENSITY * 1_000_000
    half = Fraction(bisect_left(range(10_000), volume, key=lambda mm: Fraction(mm**3)), 2000)
    return SPECIFIC * 1000 * DENSITY * half / 3 * (1 / skin + Fraction("0.405") * half / CONDUCTS)


def _curve(grams: Fraction, start: Fraction, fridge: Fraction, skin: Fraction) -> tuple[Fraction, ...]:
    share = min(STEP / seconds_of_lag(grams, skin), Fraction(1))
    found = [start]
    for _ in range(LONGEST):
        found.append(rounded(found[-1] + (fridge - found[-1]) * share, 3))
    return tuple(found)
