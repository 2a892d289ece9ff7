"""A declared weight against what the food weighs: the average system of packed goods.

Directive 76/211/EEC, Annex I, and in Great Britain the Weights and Measures (Packaged Goods) Regulations 2006: a batch weighs on
average no less than what is declared; about 1 package in 40 may be short by more than the tolerable negative error, none by twice
that.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from manchet.records import NamedTuple

_ERRORS = (
    (50, "0.09", ""),
    (100, "", "4.5"),
    (200, "0.045", ""),
    (300, "", "9"),
    (500, "0.03", ""),
    (1000, "", "15"),
    (10000, "0.015", ""),
)
"""Up to so many grams: a share of the declared weight, or grams. The last row from memory."""


def tolerable_error(declared: Fraction) -> Fraction:
    """Grams that a package may be short of `declared` grams, from 5 g to 10 kg; what is worked out from a share is rounded up to
    0.1 g."""
    for most, share, grams in _ERRORS:
        if declared <= most:
            return Fraction(grams) if grams else Fraction(ceil(declared * Fraction(share) * 10), 10)
    return Fraction(ceil(declared * Fraction(_ERRORS[-1][1]) * 10), 10)


class Shortfall(NamedTuple):
    """How far a package is under what it declares. `errors` is how many tolerable errors that is over: 0, 1 or 2."""

    grams: Fraction
    errors: int


def shortfall(declared: Fraction, weighs: Fraction) -> Shortfall | None:
    """None where it is not short. Over one error only 1 package in 40 may be, over two none."""
    short = declared - weighs
    if short <= 0:
        return None
    error = tolerable_error(declared)
    return Shortfall(short, 2 if short > 2 * error else 1 if short > error else 0)
