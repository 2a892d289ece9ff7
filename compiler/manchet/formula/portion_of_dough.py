"""What is worked into the divided dough of one sort, by its share of that dough."""

from __future__ import annotations

from manchet.formula.draft import Item
from manchet.formula.model import Booking, Portion
from manchet.formula.shares import is_flour


def portion_of_dough(item: Item) -> Portion:
    return Portion(
        name=item.meaning.name,
        key=item.meaning.key,
        ingredient=item.meaning.ingredient,
        stage=item.meaning.stage,
        share=item.figure,
        percent=item.figure * 100,
        basis="the dough",
        celsius=item.celsius,
        booking=Booking.NONE,
        counted_as="",
        is_flour=is_flour(item, {}),
        to_taste=item.to_taste,
        held=True,
        place=item.place,
    )
