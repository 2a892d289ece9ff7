"""What a gram of an ingredient costs: by its own price, or by what it is made of."""

from __future__ import annotations

from fractions import Fraction

from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient, Price
from manchet.quantities.money import Money
from manchet.records import NamedTuple


class GramPrice(NamedTuple):
    """Money for one gram on the scale, with what is trimmed off it before. `price` is the line of the larder that says it, None
    where it is put together from what the thing is made of; `prices` are all lines it follows from."""

    money: Money
    price: Price | None
    prices: tuple[Price, ...]


def gram_price(ingredient: Ingredient, larder: Larder, depth: int = 0) -> GramPrice | None:
    """None where the larder does not know, or where what it is made of is priced in several currencies."""
    buying = ingredient.buying
    price = buying.price
    if price is not None:
        amount = price.amount / price.grams / (1 - (buying.trimming or 0))
        return GramPrice(Money(amount, price.currency), price, (price,))
    if not ingredient.made_of or depth > MOST_DEEP:
        return None
    amount = Fraction(0)
    prices: tuple[Price, ...] = ()
    currencies = set()
    for part in ingredient.made_of:
        inside = larder.find(part.name)
        found = gram_price(inside, larder, depth + 1) if isinstance(inside, Ingredient) else None
        if found is None:
            return None
        amount += found.money.amount * part.share
        prices += found.prices
        currencies.add(found.money.currency)
    return GramPrice(Money(amount, currencies.pop()), None, prices) if len(currencies) == 1 else None


MOST_DEEP = 8
"""Blends of blends that are followed. Our rule: a larder's circle has been cut before."""
