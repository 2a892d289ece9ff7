"""Money as it is printed: rounded once, half up, in the decimals of its currency."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.costing.closing import closing_figures
from manchet.quantities.money import Money, decimals
from manchet.quantities.printing import round_to
from manchet.sheets.page.measures import NBSP

_SIGNS = {"EUR": "€", "GBP": "£", "USD": "$"}
"""Of the currencies whose sign is no other's where they are money; all others are printed by their letters (ISO 4217)."""


def money_text(amount: Fraction, currency: str, more: int = 0) -> str:
    """`1,234.50`; `more` decimals than the currency is written with, for what is worth less than a coin."""
    places = decimals(currency) + more
    return f"{_decimal(round_to(amount, places), places)}"


def price_tag(money: Money) -> str:
    """`7.20 €`, `£7.20`, `7.20 CHF`, as it stands on a shelf."""
    figure = money_text(money.amount, money.currency)
    sign = _SIGNS.get(money.currency, money.currency)
    return f"{sign}{figure}" if sign in "£$" else f"{figure}{NBSP}{sign}"


def money_column(amounts: Sequence[Fraction], currency: str) -> tuple[str, ...]:
    """Several that add up to their printed sum."""
    places = decimals(currency)
    return tuple(_decimal(amount, places) for amount in closing_figures(amounts, places))


def _decimal(amount: Fraction, places: int) -> str:
    whole, rest = divmod(abs(int(amount * 10**places)), 10**places)
    sign = "-" if amount < 0 else ""
    return f"{sign}{whole:,}.{rest:0{places}d}" if places else f"{sign}{whole:,}"
