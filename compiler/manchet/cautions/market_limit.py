"""A figure by which a caution is met, with those of the markets that have one of their own."""

from __future__ import annotations

from fractions import Fraction
from typing import Literal

from manchet.records import NamedTuple


class MarketLimit(NamedTuple):
    """A figure that is kept to by what is no more (`most`) or no less (`least`)."""

    keeps: Literal["most", "least"]
    figure: Fraction | None
    """Celsius, seconds, a share of 1, or pH. None where only some markets have one."""
    markets: tuple[tuple[str, Fraction], ...] = ()
    """Those with a figure of their own."""
