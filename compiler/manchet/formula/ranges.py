"""A figure of the file with its ends."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Range(NamedTuple):
    """From `low` to `high`; equal for a single figure. None is an open end (`at least`, `at most`)."""

    low: Fraction | None
    high: Fraction | None

    @property
    def likely(self) -> Fraction:
        """The figure to plan with: the middle, or the end that is given."""
        if self.low is self.high and self.low is not None:
            return self.low
        if self.low is None:
            return self.high if self.high is not None else Fraction(0)
        return self.low if self.high is None else (self.low + self.high) / 2
