"""Weights as the kitchen's scales read them, closing on flour or water so that the lines add up to the total."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from typing import NamedTuple

from manchet.formula.dilution import Dilution
from manchet.formula.mixes import Making
from manchet.formula.model import Weighed


class System(Enum):
    """The units a whole sheet is printed in."""

    METRIC = "metric"
    US = "US customary"


class Reading(NamedTuple):
    """An amount as a scale shows it. `grams` is a whole number of `step`s (grams, exact; a quarter ounce is exact too)."""

    grams: Fraction
    step: Fraction
    scale: str
    """The kitchen's name for the scale, "" for an assumed one."""
    goes: int
    """In how many goes, where the scale cannot hold it all; else 1."""


class WeighedLine(NamedTuple):
    """One line to weigh. `weighed` is exact, `reading` what stands on the sheet."""

    weighed: Weighed
    reading: Reading
    closes: bool
    """This line took up what rounding left over."""
    dilution: Dilution | None
    """The bench's way out for an amount that no scale here can weigh: weigh this instead of the reading."""

    @property
    def moved(self) -> Fraction:
        """By what share of itself the scale moves it (1/50 is 2 %)."""
        exact = self.weighed.grams
        return abs(self.reading.grams - exact) / exact if exact else Fraction(0)


class Table(NamedTuple):
    """The weighing of one making of a stage. `total` is exactly the sum of the lines' readings, in grams."""

    making: Making
    lines: tuple[WeighedLine, ...]
    total: Fraction
    fine: Fraction | None
    """Lines whose `step` is below this are for the fine scale; None if one scale weighs them all."""
    assumed: bool
    """The kitchen gives no scale: 1 g, and 0.1 g up to 20 g, are assumed (quarter ounces, and 0.01 oz below 8 oz)."""


NOTABLE = Fraction(2, 100)
"""A line moved by more than this is remarked on. Our own rule."""
