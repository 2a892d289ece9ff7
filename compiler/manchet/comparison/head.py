"""What the head says beside size and losses: how it is sold and kept, what it is called, what is noted."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.kept_within import kept_within
from manchet.comparison.pieces import of_noun
from manchet.comparison.values import HeadChange, HeadValue, Rank
from manchet.formula.model import Branch
from manchet.formula.sale import Sale

NO_SALE = Sale()


def head_changes(one: Work, other: Work) -> Iterator[HeadChange]:
    """In the order of the page: what costs and keeps, then words."""
    before, after = one.formula, other.formula
    yield from _sale_changes(before.sale or NO_SALE, after.sale or NO_SALE, "")
    for old, new in _branches(one, other):
        yield from _sale_changes(old.sale or NO_SALE, new.sale or NO_SALE, new.noun)
    yield from _change("sold at", before.sold, after.sold)
    yield from _change("never under", before.never_under, after.never_under)
    yield from _kept(one, other)
    yield from _change("kind", before.kind, after.kind, Rank.NAMES)
    yield from _change("about", before.about, after.about, Rank.WORDS)
    for was, now in _lists_apart(before.notes, after.notes):
        yield from _change("note", was, now, Rank.WORDS)


def _change(
    what: str, before: HeadValue, after: HeadValue, rank: Rank = Rank.COST, noun: str = ""
) -> Iterator[HeadChange]:
    if before != after:
        yield HeadChange(what, before or None, after or None, noun, rank)


def _sale_changes(before: Sale, after: Sale, noun: str) -> Iterator[HeadChange]:
    yield from _change("price", _price(before), _price(after), noun=noun)
    old, new = ({way.way: way.net for way in sale.ways} for sale in (before, after))
    for way in dict.fromkeys((*new, *old)):
        if way in old and way in new:
            yield from _change("net weight", old[way], new[way], noun=noun)
        else:
            yield HeadChange("sold", way if way in old else None, way if way in new else None, noun, Rank.WORDS)
    a, b = before.date_mark, after.date_mark
    for word in ("best before", "use by"):
        was, now = ((one.seconds, one.celsius) if one and one.word == word else None for one in (a, b))
        yield from _change(word, was, now, noun=noun)
    for what in ("called", "store", "opened"):
        said = (getattr(sale, what) for sale in (before, after))
        was_said, now_said = (text.text if text else "" for text in said)
        yield from _change(what, was_said, now_said, Rank.WORDS, noun)
    told, tells = (", ".join(text.text for text in sale.how_much_of) for sale in (before, after))
    yield from _change("says how much of", told, tells, Rank.WORDS, noun)


def _price(sale: Sale) -> tuple[Fraction, str] | None:
    return None if sale.sells_at is None else (sale.sells_at.price.amount, sale.sells_at.price.currency)


def _branches(before: Work, after: Work) -> Iterator[tuple[Branch, Branch]]:
    for new in after.formula.branches:
        old = of_noun(new.noun, before.formula.branches)
        if old is not None:
            yield old, new


def _kept(before: Work, after: Work) -> Iterator[HeadChange]:
    """As long as it is printed: where a caution is against what the file says, its limit counts."""
    old, new = ({kept.way: (kept.seconds, kept.celsius) for kept in kept_within(work)} for work in (before, after))
    for way in dict.fromkeys((*new, *old)):
        yield from _change("good for", old.get(way), new.get(way))


def _lists_apart(before: tuple[str, ...], after: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """What only one side says, in pairs as far as there are two."""
    gone, new = [one for one in before if one not in after], [one for one in after if one not in before]
    for at in range(max(len(gone), len(new))):
        yield (gone[at] if at < len(gone) else ""), (new[at] if at < len(new) else "")
