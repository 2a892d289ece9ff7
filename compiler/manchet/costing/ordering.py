"""What has to be bought for what is made: all that is weighed for it, less what was counted, in whole packs upward.

Water comes from the tap and cultures from their pots; neither is bought.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil

from manchet.batch.work import Work
from manchet.costing.charges import baked_for, charges_of, own_charges
from manchet.larder.ingredient import Ingredient
from manchet.larder.names import key
from manchet.larder.stocktake import Stock
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class Needed(NamedTuple):
    """An ingredient: grams that are bought for it to be weighed (with what is trimmed off), and what was counted of it."""

    ingredient: Ingredient
    grams: Fraction
    stock: Fraction | None
    """None where nobody has counted it."""
    named: bool
    """The stocktake names it, whether with a figure or without."""

    @property
    def lacking(self) -> Fraction:
        """What is to be bought; all of it, where nobody knows what is there."""
        return max(self.grams - (self.stock or NOTHING), NOTHING)

    @property
    def unsaid(self) -> bool:
        """It stands in the stocktake without a figure: then nobody can say what is to be bought."""
        return self.named and self.stock is None


class Bought(NamedTuple):
    """`packs` of `pack` grams; 0 and None where the larder knows no pack of it. `money` is exact, None without a price."""

    wanted: Needed
    packs: int
    pack: Fraction | None
    packed_as: str
    money: Fraction | None
    currency: str
    seller: str

    @property
    def left(self) -> Fraction | None:
        """Grams left when all is made; None where nobody knows the pack."""
        if self.pack is None:
            return None
        return (self.wanted.stock or NOTHING) + self.packs * self.pack - self.wanted.grams


class Ordering(NamedTuple):
    bought: tuple[Bought, ...]
    """By seller, the most expensive first."""
    enough: tuple[Needed, ...]
    unsaid: tuple[Needed, ...]


def ordering(works: Iterable[Work], stock: Stock) -> Ordering:
    """The order for some works, each with its own ingredients; preparations are works among them. The breads that a dish is
    built on are baked besides those that are sold."""
    grams: dict[str, Fraction] = {}
    ingredients: dict[str, Ingredient] = {}
    works = tuple(works)
    breads = [made for work in works for _, made, _ in baked_for(work)]
    for charges in (*map(own_charges, works), *map(charges_of, breads)):
        for line in charges.lines:
            if line.ingredient.class_ == "water":
                continue
            name = key(line.ingredient.name)
            ingredients[name] = line.ingredient
            whole = line.grams / (1 - (line.ingredient.buying.trimming or 0))
            grams[name] = grams.get(name, NOTHING) + whole
    wanted = [
        Needed(ingredients[name], amount, stock.counted.get(name), name in stock.counted)
        for name, amount in grams.items()
    ]
    bought = [_bought(one) for one in wanted if not one.unsaid and one.lacking]
    return Ordering(
        tuple(
            sorted(bought, key=lambda one: (not one.seller, one.seller, -(one.money or 0), one.wanted.ingredient.name))
        ),
        tuple(sorted((one for one in wanted if not one.unsaid and not one.lacking), key=_by_name)),
        tuple(sorted((one for one in wanted if one.unsaid), key=_by_name)),
    )


def _by_name(wanted: Needed) -> str:
    return wanted.ingredient.name


def _bought(wanted: Needed) -> Bought:
    buying = wanted.ingredient.buying
    price = buying.price
    pack = buying.pack or (price.grams if price is not None else None)
    if pack is None:
        return Bought(wanted, 0, None, "", None, "", "")
    packs = ceil(wanted.lacking / pack)
    packed_as = buying.packed_as if buying.pack else price.bought if price is not None else ""
    if price is None:
        return Bought(wanted, packs, pack, packed_as, None, "", "")
    return Bought(
        wanted, packs, pack, packed_as, price.amount / price.grams * pack * packs, price.currency, price.seller
    )
