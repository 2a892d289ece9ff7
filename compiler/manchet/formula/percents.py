"""Shares as a message says them: exact where that is short, else rounded and marked."""

from __future__ import annotations

from fractions import Fraction

from manchet.quantities.printing import percent_text


def percent(share: Fraction) -> str:
    """`0.76` as "76 %", `1/3` as "33.33 %"."""
    return percent_text(share * 100)
