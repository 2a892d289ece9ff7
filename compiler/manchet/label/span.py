"""A figure that is known, or known to lie between two."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple

NOTHING = Fraction(0)


class LowHigh(NamedTuple):
    """From `low` to `high`; both alike where it is known."""

    low: Fraction
    high: Fraction

    @property
    def middle(self) -> Fraction:
        return (self.low + self.high) / 2

    @property
    def width(self) -> Fraction:
        return self.high - self.low

    @property
    def is_known(self) -> bool:
        return self.low == self.high

    def plus(self, other: LowHigh) -> LowHigh:
        return LowHigh(self.low + other.low, self.high + other.high)

    def times(self, factor: Fraction) -> LowHigh:
        """By a factor of 0 or more."""
        return LowHigh(self.low * factor, self.high * factor)

    def within(self, other: LowHigh) -> LowHigh:
        """What both allow; `other` where they have nothing in common, which what bounds it cannot say."""
        low, high = max(self.low, other.low), min(self.high, other.high)
        return LowHigh(low, high) if low <= high else other


NONE_OF_IT = LowHigh(NOTHING, NOTHING)


def exactly(value: Fraction) -> LowHigh:
    return LowHigh(value, value)
