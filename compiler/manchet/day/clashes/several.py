"""Where several things clash: what would mend each by itself, and which changes mend the day together."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from itertools import product

from manchet.day.clashes.asking import Inquiry, TimeIsUp
from manchet.day.clashes.eased import eased_day
from manchet.day.clashes.less import on_time, without
from manchet.day.clashes.values import DayClash, Hour, Remedy
from manchet.day.model import Day

MOST_TRIED = 16
MOST_SAID = 3
"""Sets of changes. Our own figures: whoever reads more of them chooses none."""


Mends = Callable[[Day, Sequence[str], Inquiry, Hour], Iterator[Remedy]]


def with_mends(
    day: Day, clashes: Sequence[DayClash], mends: Mends, inquiry: Inquiry, hour: Hour
) -> tuple[DayClash, ...]:
    """Each clash with what more mends it, in a day without what only the others clash over."""
    found = []
    for clash in clashes:
        theirs = {bread for other in clashes for bread in other.breads}.difference(clash.breads)
        more: list[Remedy] = []
        with suppress(TimeIsUp):
            more.extend(mends(without(day, frozenset(theirs)), clash.breads, inquiry, hour))
        found.append(clash._replace(remedies=(*clash.remedies, *more)))
    return tuple(found)


def together(day: Day, clashes: Sequence[DayClash], inquiry: Inquiry) -> tuple[Remedy, ...]:
    """One change of each clash (one that mends several stands once), where all of them make the day: those that leave out least and move least first."""
    found: list[Remedy] = []
    each_once = (tuple(dict.fromkeys(way)) for way in product(*(clash.remedies for clash in clashes)))
    ways = sorted(dict.fromkeys(each_once), key=_cost)
    with suppress(TimeIsUp):
        for way in ways[:MOST_TRIED]:
            if len(found) < MOST_SAID and inquiry.plan(on_time(eased_day(day, way))) is not None:
                found.append(Remedy("together", ", and ".join(change.words for change in way), parts=way))
    return tuple(found)


def _cost(way: Sequence[Remedy]) -> tuple[int, int]:
    return sum(change.kind == "without" for change in way), sum(change.minutes for change in way)
