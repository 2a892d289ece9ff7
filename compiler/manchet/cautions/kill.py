"""How long at how much heat kills as many germs: what is said to stand so hot for so long, against a table of equals.

UK Food Standards Agency, cooking temperatures (safeworkers.co.uk, safe cooking temperatures): 60 C for 45 minutes, 65 for 10, 70 for 2, 75 for 30
seconds, 80 for 6. Between two rows the logarithm of the time goes by the degrees; below the first and above the last nothing is said.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise

from manchet.cautions.legs import Leg, comes_to, stays_at, was_boiled

EQUALS = ((60, 2700), (65, 600), (70, 120), (75, 30), (80, 6))
"""Degrees Celsius in the middle, and seconds there."""
AT_ONCE = Fraction(75)
"""What comes to this is through: it is half a minute on its way from there."""


def kills(celsius: Fraction, seconds: Fraction) -> bool:
    """Whether so long at so many degrees, in the middle, is one of the equals or more. Hotter than the last row counts as that row."""
    if celsius >= EQUALS[-1][0]:
        return seconds >= EQUALS[-1][1]
    for (low, longer), (high, shorter) in pairwise(EQUALS):
        if low <= celsius <= high:
            between = Fraction(celsius - low) / (high - low)
            up, of = between.as_integer_ratio()  # longer x (shorter / longer) ** (up / of), without its root
            reached: Fraction = seconds**of
            needed: int = longer ** (of - up) * shorter**up
            return reached >= needed
    return False


def seconds_at(celsius: Fraction) -> Fraction | None:
    """Whole seconds that are enough at so many degrees; None below the first row, where nothing is known."""
    if celsius < EQUALS[0][0]:
        return None
    return Fraction(bisect_left(range(EQUALS[0][1]), True, key=lambda n: kills(celsius, Fraction(n))))


def is_heated_through(legs: Sequence[Leg]) -> bool:
    """Whether what was heated can have no raw germs in it, as far as its steps say: boiled, come to 75 C, or held at less for long enough. A
    heat that says no end is taken at its word: an oven, a dry pan."""
    if was_boiled(legs) or comes_to(legs, AT_ONCE):
        return True
    heated = [leg for leg in legs if leg.heats]
    if any(leg.end.low is None and (not leg.is_said or leg.around >= 100) for leg in heated):
        return True
    degrees = sorted({h.celsius.likely for leg in legs for h in leg.step.heats if 60 <= h.celsius.likely < 100})
    return any(stays_at(legs, one, needed) for one in degrees if (needed := seconds_at(one)) is not None)
