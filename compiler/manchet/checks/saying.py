"""How a check says its figures: the way a baker says them.

The figures in a message are read, not weighed; they go through the one place that rounds.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.model import Range
from manchet.quantities.printing import decimal


def _figure(value: Fraction) -> str:
    """At most three digits that mean something, no trailing nought: 0.125, 2.08, 67.4, 1350."""
    return decimal(value, 0 if abs(value) >= 100 else 1 if abs(value) >= 10 else 2 if abs(value) >= 1 else 3)


def percent(share: Fraction) -> str:
    """A share of 1 as `2.1%`."""
    return f"{_figure(share * 100)}%"


def grams(value: Fraction) -> str:
    return (
        f"{_figure(value / 1000)} kg"
        if value >= 10_000 or (value >= 1000 and value % 1000 == 0)
        else f"{_figure(value)} g"
    )


def celsius(value: Fraction) -> str:
    return f"{_figure(value)} C"


def fahrenheit(value: Fraction) -> str:
    """A Celsius figure said in Fahrenheit."""
    return f"{_figure(value * 9 / 5 + 32)} F"


def duration(seconds: Fraction) -> str:
    """`40 s`, `25 min`, `2.5 h`, `3 d`: no more digits than a clock on a bakery's wall."""
    if seconds >= 172_800 and seconds % 86_400 == 0:
        return f"{decimal(seconds / 86_400, 0)} d"
    if seconds >= 5400 or (seconds >= 3600 and seconds % 3600 == 0):
        return f"{decimal(seconds / 3600, 1)} h"
    if seconds >= 90 or (seconds >= 60 and seconds % 60 == 0):
        return f"{decimal(seconds / 60, 1 if seconds < 600 else 0)} min"
    return f"{decimal(seconds, 0)} s"


def bread(noun: str) -> str:
    """What the pieces are called in a sentence: `the loaves`, `the bread`."""
    return f"the {noun}" if noun else "the bread"


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
