"""Money as it is printed: exact, rounded once, half up, to the coin of its currency."""

from __future__ import annotations

from fractions import Fraction

from manchet.quantities.money import Money, decimals
from manchet.quantities.printing import decimal
from manchet.sheets.page.measures import NBSP

_SIGNS = {"EUR": "€", "GBP": "£", "USD": "$"}
"""Of the currencies whose sign is no other's where they are money; all others are printed by their letters (ISO 4217)."""


def price_tag(money: Money) -> str:
    """`7.20 €`, `£7.20`, `7.20 CHF`"""
    places = decimals(money.currency)
    figure = decimal(money.amount, places, places)
    sign = _SIGNS.get(money.currency, money.currency)
    return f"{sign}{figure}" if sign in "£$" else f"{figure}{NBSP}{sign}"


def per_kilo(money: Money, grams: Fraction) -> Money:
    """What 1 kg costs where so many grams cost that."""
    return money._replace(amount=money.amount * 1000 / grams)
