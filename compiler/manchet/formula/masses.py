"""Grams as a message says them."""

from __future__ import annotations

from fractions import Fraction

from manchet.quantities.printing import mass_text


def grams(mass: Fraction) -> str:
    return mass_text(mass)
