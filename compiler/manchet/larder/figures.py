"""A figure of a larder or kitchen line in its base unit, and back into words."""

from __future__ import annotations

from fractions import Fraction

from manchet.quantities.units import UNITS, factor
from manchet.syntax.nodes import Amount


def worth(amount: Amount, dimension: str, measures: str = "") -> Fraction | None:
    """A single figure of that dimension in its base unit (g, ml, s, Celsius, g/ml).

    None for a range, an open end, a bare number, another dimension, or a pint or gallon of no known country.
    """
    if amount.low is None or amount.low != amount.high or not amount.unit or amount.smaller:
        return None
    unit = UNITS[amount.unit]
    size = factor(amount.unit, measures)
    if unit.dimension != dimension or size is None:
        return None
    return (amount.low - unit.offset) * size


def show_figure(figure: Fraction) -> str:
    """At most two decimals, for a remark: no sum is made of it."""
    hundredths = round(figure * 100)
    whole, rest = divmod(abs(hundredths), 100)
    decimals = f".{rest:02d}".rstrip("0").rstrip(".")
    return f"{'-' if hundredths < 0 else ''}{whole}{decimals}"
