"""Money as it is printed: rounded once, half up, in the decimals of its currency."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.costing.closing import closing_figures, half_up
from manchet.quantities.money import decimals


def money_text(amount: Fraction, currency: str, more: int = 0) -> str:
    """`1,234.50`; `more` decimals than the currency is written with, for what is worth less than a coin."""
    places = decimals(currency) + more
    return f"{_decimal(half_up(amount, places), places)}"


def money_column(amounts: Sequence[Fraction], currency: str) -> tuple[str, ...]:
    """Several that add up to their printed sum."""
    places = decimals(currency)
    return tuple(_decimal(amount, places) for amount in closing_figures(amounts, places))


def _decimal(amount: Fraction, places: int) -> str:
    whole, rest = divmod(abs(int(amount * 10**places)), 10**places)
    sign = "-" if amount < 0 else ""
    return f"{sign}{whole:,}.{rest:0{places}d}" if places else f"{sign}{whole:,}"
