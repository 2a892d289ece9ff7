"""How a check speaks: a report at a place, with figures said the way a baker says them.

The figures in a message are read, not weighed; they go through the one place that rounds.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.formula.model import Range


def warning(name: str, place: Place, message: str, help: str = "") -> Diagnostic:
    return Diagnostic(name, Severity.WARNING, message, place, help)


def note(name: str, place: Place, message: str, help: str = "") -> Diagnostic:
    return Diagnostic(name, Severity.NOTE, message, place, help)


def error(name: str, place: Place, message: str, help: str = "") -> Diagnostic:
    return Diagnostic(name, Severity.ERROR, message, place, help)


def _figure(value: Fraction) -> str:
    """At most three digits that mean something, no trailing nought: 0.125, 2.08, 67.4, 1350."""
    places = 0 if abs(value) >= 100 else 1 if abs(value) >= 10 else 2 if abs(value) >= 1 else 3
    text = f"{round(value, places):.{places}f}" if places else str(round(value))
    return text.rstrip("0").rstrip(".") if "." in text else text


def percent(share: Fraction) -> str:
    """A share of 1 as `2.1%`."""
    return f"{_figure(share * 100)}%"


def grams(value: Fraction) -> str:
    return f"{_figure(value / 1000)} kg" if value >= 10_000 else f"{_figure(value)} g"


def celsius(value: Fraction) -> str:
    return f"{_figure(value)} C"


def fahrenheit(value: Fraction) -> str:
    """A Celsius figure said in Fahrenheit."""
    return f"{_figure(value * 9 / 5 + 32)} F"


def duration(seconds: Fraction) -> str:
    """`40 s`, `25 min`, `12 h`, `2 d`, in the largest unit that leaves a figure over one and a half."""
    for unit, size in (("d", 86400), ("h", 3600), ("min", 60)):
        if seconds >= size * Fraction(3, 2) or (seconds >= size and seconds % size == 0):
            return f"{_figure(seconds / size)} {unit}"
    return f"{_figure(seconds)} s"


def span(time: Range) -> str:
    """A time with its ends: `12 h`, `40 min to 50 min`, `at least 24 h`."""
    if time.low is None or time.high is None:
        word = "at most" if time.low is None else "at least"
        return f"{word} {duration(time.likely)}"
    if time.low == time.high:
        return duration(time.low)
    return f"{duration(time.low)} to {duration(time.high)}"
