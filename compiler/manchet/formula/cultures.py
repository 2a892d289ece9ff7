"""Cultures: what is in the pot, and how it stands in the formula."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.diagnostics.suggest import fold
from manchet.formula.draft import Draft, Item
from manchet.formula.model import Booking
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple


class Leaf(NamedTuple):
    """One thing a culture is made of in the end, and grams of it per gram of culture."""

    key: str
    ingredient: Ingredient
    share: Fraction


def is_culture(item: Item) -> bool:
    return item.meaning.ingredient is not None and item.meaning.ingredient.class_ == "culture"


def leaves(ingredient: Ingredient, larder: Larder) -> tuple[Leaf, ...]:
    """What a culture is made of, cultures inside it taken apart too; () if the larder does not say."""
    found: list[Leaf] = []
    for part in ingredient.made_of:
        inside = larder.find(part.name)
        if not isinstance(inside, Ingredient):
            return ()
        if inside.class_ == "culture" and inside.name != ingredient.name:
            found += [leaf._replace(share=leaf.share * part.share) for leaf in leaves(inside, larder)]
        else:
            found.append(Leaf(fold(inside.name), inside, part.share))
    return tuple(found)


def subtree(key: str, drafts: dict[str, Draft]) -> set[str]:
    """A stage and every stage that goes into it."""
    seen: set[str] = set()
    waiting = [key]
    while waiting:
        at = waiting.pop()
        if at in seen or at not in drafts:
            continue
        seen.add(at)
        waiting += [item.meaning.stage for item in drafts[at].items if item.meaning.stage]
    return seen


def returned_in(drafts: dict[str, Draft]) -> dict[tuple[str, str], str]:
    """(stage, culture) pairs whose culture goes back to the pot, and the stage where it is taken out."""
    found: dict[tuple[str, str], str] = {}
    for draft in drafts.values():
        for step in draft.steps:
            if step.verb == "return":
                for goes in step.goes:
                    for stage in subtree(draft.key, drafts):
                        found[stage, goes.key] = draft.key
    return found


def booking_of(item: Item, stage: str, returned: Iterable[tuple[str, str]]) -> Booking:
    if not is_culture(item):
        return Booking.APART if item.booking == "apart" else Booking.NONE
    if (stage, item.meaning.key) in returned:
        return Booking.RETURNED
    return Booking.APART if item.booking == "apart" else Booking.COUNTED


def counted_key(flour: str, larder: Larder) -> str:
    """The key of the flour that `counted as …` names."""
    found = larder.ingredient(flour)
    return fold(found.name if found else flour)
