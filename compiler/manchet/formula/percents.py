"""Shares as a message says them: the way the file writes them."""

from __future__ import annotations

from fractions import Fraction

from manchet.quantities.printing import decimal, telling


def percent(share: Fraction) -> str:
    """`0.76` as "76%", `1/3` as "33.33%"."""
    return f"{decimal(share * 100, telling(share * 100, 2))}%"
