"""The weighing of one making of a stage, as it stands on a sheet."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.batch.dilution import Dilution
from manchet.batch.mixes import Making
from manchet.batch.model import Weighed
from manchet.batch.scales import Reading


class WeighedLine(NamedTuple):
    """One line to weigh. `weighed` is what the formula asks, exact; `reading` is what stands on the sheet."""

    weighed: Weighed
    wanted: Fraction
    """Exact grams for this line: as weighed, less what a dilution brings of it, or the part of a dilution to use."""
    reading: Reading
    closes: bool
    """This line took up what rounding left over."""
    dilution: Dilution | None
    """The bench's way out for an amount that no scale here can weigh: `reading` is then the part of it to use."""

    @property
    def shown(self) -> Fraction:
        """Grams that stand on the sheet: as the scale reads, or exact where it would read nothing of something."""
        return self.reading.grams or self.wanted

    @property
    def moved(self) -> Fraction:
        """By what share of itself the ingredient is moved (1/50 is 2 %)."""
        if self.dilution is not None:
            exact, given = self.weighed.grams, self.dilution.brings
        else:
            exact, given = self.wanted, self.reading.grams
        return abs(given - exact) / exact if exact else Fraction(0)


class Table(NamedTuple):
    """The weighing of one making of a stage. `total` is exactly the sum of the lines' readings, in grams."""

    making: Making
    lines: tuple[WeighedLine, ...]
    total: Fraction
    fine: Fraction | None
    """Lines whose `step` is below this are for the fine scale; None if one scale weighs them all."""
    assumed: bool
    """The kitchen gives no scale: 1 g, and 0.1 g up to 20 g, are assumed (quarter ounces, and 0.01 oz under 8 oz)."""
