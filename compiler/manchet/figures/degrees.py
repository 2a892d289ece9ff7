"""Celsius of a figure said in Fahrenheit too, for a kitchen that writes its own temperatures so."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.quantities.printing import decimal
from manchet.quantities.units import in_fahrenheit

if TYPE_CHECKING:
    from manchet.figures.figure import Figure, Given

APART = re.compile(r"^friction|warms by|less balance|heat of wetting in|falls an hour|load takes")
"""Names of what is a difference between two temperatures, and no reading."""

_RANGE = re.compile(r"(?<![\d.])(-?\d+(?:\.\d+)?) to (-?\d+(?:\.\d+)?) C\b")
_AT = re.compile(r"\bat (-?\d+(?:\.\d+)?) C\b")


def beside(figure: Figure | Given, degrees: str) -> str:
    """` (75 F)`, to stand after a figure in C; "" for any other, and in a house of Celsius."""
    if degrees != "F" or figure.unit != "C":
        return ""
    return f" ({decimal(in_fahrenheit(figure.value, _readings(figure)), 0)} F)"


def _readings(figure: Figure | Given) -> int:
    """A base temperature is the sum of so many readings, a difference is none; anything else is one."""
    if APART.search(figure.name):
        return 0
    return len(getattr(figure, "inputs", ())) if figure.name == "base temperature" else 1


def with_fahrenheit(text: str, degrees: str) -> str:
    """A name or a rule with its `19 to 24 C` and `at 18 C` in Fahrenheit too."""
    if degrees != "F":
        return text
    text = _RANGE.sub(lambda found: f"{found[0]} ({_fahrenheit(found[1])} to {_fahrenheit(found[2])} F)", text)
    return _AT.sub(lambda found: f"{found[0]} ({_fahrenheit(found[1])} F)", text)


def _fahrenheit(celsius: str) -> str:
    return decimal(in_fahrenheit(Fraction(celsius)), 0)
