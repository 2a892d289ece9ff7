"""Amounts of the file as ranges in the units of the model: seconds, degrees Celsius, millimetres."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.formula.ranges import Range
from manchet.quantities.units import UNITS
from manchet.syntax.nodes import Amount


def seconds(amount: Amount) -> Range:
    factor = UNITS[amount.unit].factor
    return _range(amount, lambda x: x * factor)


def millimetres(amount: Amount) -> Range:
    factor = UNITS[amount.unit].factor
    return _range(amount, lambda x: x * factor)


def celsius(amount: Amount) -> Range:
    """A reading; a bare number is taken as it stands (pH, times its volume)."""
    if amount.unit == "F":
        return _range(amount, lambda x: (x - 32) * Fraction(5, 9))
    return plain(amount)


def share(amount: Amount) -> Range:
    """Of a per cent: a share of 1."""
    return _range(amount, lambda x: x / 100)


def plain(amount: Amount) -> Range:
    return Range(amount.low, amount.high)


def _range(amount: Amount, turn: Callable[[Fraction], Fraction]) -> Range:
    if amount.low is amount.high and amount.low is not None:
        figure = turn(amount.low)
        return Range(figure, figure)
    return Range(
        None if amount.low is None else turn(amount.low),
        None if amount.high is None else turn(amount.high),
    )
