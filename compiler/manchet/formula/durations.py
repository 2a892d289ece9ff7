"""How a report says a time: as a baker says it."""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.model import Range
from manchet.quantities.printing import decimal


def duration(seconds: Fraction) -> str:
    """`40 s`, `25 min`, `2.5 h`, `3 d`: no more digits than a clock on a bakery's wall."""
    if seconds >= 172_800 and seconds % 86_400 == 0:
        return f"{decimal(seconds / 86_400, 0)} d"
    if seconds >= 5400 or (seconds >= 3600 and seconds % 3600 == 0):
        return f"{decimal(seconds / 3600, 1)} h"
    if seconds >= 90 or (seconds >= 60 and seconds % 60 == 0):
        return f"{decimal(seconds / 60, 1 if seconds < 600 else 0)} min"
    return f"{decimal(seconds, 0)} s"


def span(time: Range) -> str:
    """A time with its ends: `12 h`, `40-50 min`, `45 min to 2 h`, `at least 24 h`."""
    if time.low is None or time.high is None:
        word = "at most" if time.low is None else "at least"
        return f"{word} {duration(time.likely)}"
    if time.low == time.high:
        return duration(time.low)
    low, high = duration(time.low), duration(time.high)
    (first, unit), (last, other) = low.split(), high.split()
    return f"{first}-{last} {unit}" if unit == other else f"{low} to {high}"
