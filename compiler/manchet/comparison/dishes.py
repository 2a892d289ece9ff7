"""What a plate takes of what is counted: slices of a loaf, whole buns."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from manchet.batch.work import Work
from manchet.comparison.values import CountedChange
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class CountedPart(NamedTuple):
    """How many of it one plate takes."""

    name: str
    unit: str
    """"slices" or "whole"."""
    number: Fraction


def counted_changes(before: Work, after: Work, renamed: Mapping[str, str]) -> Iterator[CountedChange]:
    """In the order of the newer dish; what is gone after it. Nothing where neither is one. `renamed`: newer keys by older ones."""
    old = {renamed.get(key, key): part for key, part in _counted(before).items()}
    new = _counted(after)
    for key, known in {**new, **old}.items():
        was, now = (side[key].number if key in side else None for side in (old, new))
        if was != now or (key in old and key in new and old[key].unit != new[key].unit):
            units = tuple(side[key].unit if key in side else known.unit for side in (old, new))
            yield CountedChange(known.name, was, now, *units)


def _counted(work: Work) -> Mapping[str, CountedPart]:
    plates = sum((piece.number for piece in work.batch.pieces), NOTHING)
    found: dict[str, CountedPart] = {}
    for weighed in work.dough.weighed if work.formula.dish and plates else ():
        counted = weighed.portion.counted
        if counted is not None and counted.grams:
            each = weighed.grams / counted.grams / plates
            found[weighed.portion.key] = CountedPart(weighed.portion.name, counted.unit, each)
    return found
