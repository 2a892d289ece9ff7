"""An exact value as plain data: the figure a person trusts beside the number a program takes."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from manchet.formula.ranges import Range
from manchet.quantities.printing import exact_text, rounded_number


def quantity(value: Fraction, unit: str) -> dict[str, Any]:
    """`exact` is a finite decimal as text, else "a/b"; `rounded` a number with at most six decimals."""
    return {"exact": exact_text(value), "rounded": rounded_number(value), "unit": unit}


def ends(figure: Range, unit: str) -> dict[str, Any]:
    """From `low` to `high`, equal for a single figure; None is an open end."""
    return {
        name: None if end is None else quantity(end, unit) for name, end in (("low", figure.low), ("high", figure.high))
    }
