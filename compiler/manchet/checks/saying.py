"""How a check says its figures: the way a baker says them.

The figures in a message are read, not weighed; they go through the one place that rounds.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.durations import duration as duration, span as span
from manchet.formula.model import KeptFor
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import decimal, telling
from manchet.quantities.units import in_fahrenheit


def _figure(value: Fraction) -> str:
    """At most three digits that mean something, no trailing nought: 0.125, 2.08, 67.4, 1350."""
    places = 0 if abs(value) >= 100 else 1 if abs(value) >= 10 else 2 if abs(value) >= 1 else 3
    return decimal(value, telling(value, places))


def percent(share: Fraction) -> str:
    """A share of 1 as `2.1%`."""
    return f"{_figure(share * 100)}%"


def grams(value: Fraction) -> str:
    return (
        f"{_figure(value / 1000)} kg"
        if value >= 10_000 or (value >= 1000 and value % 1000 == 0)
        else f"{_figure(value)} g"
    )


def millimetres(value: Fraction) -> str:
    return f"{decimal(value, 0)} mm"


def celsius(value: Fraction) -> str:
    return f"{_figure(value)} C"


def fahrenheit(value: Fraction) -> str:
    """A Celsius figure said in Fahrenheit."""
    return f"{_figure(in_fahrenheit(value))} F"


def degrees(kitchen: Kitchen, value: Fraction) -> str:
    """A temperature as the kitchen writes its own: `26 C`, `79 F`."""
    return fahrenheit(value) if kitchen.degrees == "F" else celsius(value)


def time_kept(kitchen: Kitchen, one: KeptFor) -> str:
    """How long something is good for: `3 d at 4 C`, `2 h`."""
    return duration(one.seconds) + (f" at {degrees(kitchen, one.celsius.likely)}" if one.celsius is not None else "")


def limit_degrees(kitchen: Kitchen, most: Fraction) -> str:
    """A limit that nothing may be over, as the sheet prints it: to the whole degree, `4 C`, `39 F`."""
    return f"{decimal(in_fahrenheit(most), 0)} F" if kitchen.degrees == "F" else celsius(most)


def other_warmth(kitchen: Kitchen, name: str, value: Fraction, cooler: bool) -> str:
    """What is to be done with a thing before it goes in: `cool the scald to about 34 C`."""
    return f"{'cool' if cooler else 'warm'} the {name} to about {degrees(kitchen, Fraction(round(value)))}"


def bread(noun: str) -> str:
    """What the pieces are called in a sentence: `the loaves`, `the bread`."""
    return f"the {noun}" if noun else "the bread"
