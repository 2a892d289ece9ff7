"""Four steps, from what anybody sees to what has to be searched: the first that finds something speaks."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from manchet.day.clashes.asking import Inquiry, TimeIsUp
from manchet.day.clashes.less import on_time, without
from manchet.day.clashes.remedies import an_hour_or_bread, more_hands, remedies_of
from manchet.day.clashes.seen import clashes_seen
from manchet.day.clashes.several import together, with_mends
from manchet.day.clashes.smallest import ClashCore, clash_of, smallest
from manchet.day.clashes.sums import clashes_counted
from manchet.day.clashes.values import Ask, Clashes, DayClash, Hour
from manchet.day.clashes.words import and_list
from manchet.day.model import Day

MOST_CLASHES = 3


def clashes_of(day: Day, ask: Ask, hour: Hour, elapsed: Callable[[], int]) -> Clashes | None:
    """Why a day can't be done on time, and what would help; None where it can.

    `elapsed` tells the seconds since this was asked: after some nine of them nothing more is looked for.
    """
    inquiry = Inquiry(ask, elapsed)
    known: list[tuple[DayClash, ClashCore | None]] = []
    try:
        known.extend(_all_found(day, inquiry, hour))
    except TimeIsUp:
        known = known or [(_too_many(day, inquiry), None)]
    if not known:
        return None
    cores = tuple(core for _, core in known if core is not None)
    found = tuple(clash for clash, _ in known)
    if len(found) == 1:
        found = (_for_one(found[0]),)
    clashing = [_to_change(day, clash, inquiry) for clash in found]
    if len(found) == 1:
        tried = remedies_of(day, clashing, cores, inquiry, hour)
        return Clashes(found, tried.remedies, tried.useless, inquiry.is_certain, tried.is_finished)
    found = with_mends(day, found, an_hour_or_bread, inquiry, hour)
    joint = together(day, found, inquiry)
    tried = remedies_of(day, clashing, cores, inquiry, hour)
    if not tried.remedies:
        # What takes longest to ask, and is asked of the whole day before.
        found = with_mends(day, found, more_hands, inquiry, hour)
        joint = joint or together(day, found, inquiry)
    is_finished = tried.is_finished and not inquiry.is_over()
    return Clashes(found, (*tried.remedies, *joint), tried.useless, inquiry.is_certain, is_finished)


def _to_change(day: Day, clash: DayClash, inquiry: Inquiry) -> tuple[str, ...]:
    """The breads of the clash, if these clash without any other too; else all."""
    if clash.how == "searched" and clash.is_certain:
        return clash.breads
    breads = tuple(bread for bread in day.breads if bread in clash.breads)
    try:
        is_enough = breads and inquiry.plan(on_time(without(day, frozenset(day.breads).difference(breads)))) is None
    except TimeIsUp:
        is_enough = True
    return breads if is_enough else day.breads


def _all_found(day: Day, inquiry: Inquiry, hour: Hour) -> Iterator[tuple[DayClash, ClashCore | None]]:
    """What clashes, and what else among the breads that are not in it, as long as these clash too. What is seen or counted goes
    before what has to be searched; of that, a smallest set."""
    rest, number = day, 0
    while rest.breads and number < MOST_CLASHES:
        strict = on_time(rest)
        known: list[tuple[DayClash, ClashCore | None]] = [
            (clash, None) for clash in clashes_seen(strict, hour) or clashes_counted(strict, hour)
        ]
        if not known:
            if inquiry.plan(strict) is not None:
                return
            core = smallest(rest, inquiry)
            if core is None:
                if not number:
                    yield _too_many(day, inquiry), None
                return
            known = [(_told(core, inquiry, hour), core)]
        yield from known
        theirs = frozenset(bread for clash, _ in known for bread in clash.breads)
        if not theirs:
            return
        rest, number = without(rest, theirs), number + len(known)


def _for_one(clash: DayClash) -> DayClash:
    """A smallest set of breads is not the only one."""
    is_one = clash.how == "searched" and clash.is_certain and len(clash.reasons) > 0 and len(clash.breads) > 1
    return clash._replace(head=f"for one thing, {clash.head}") if is_one else clash


def _told(core: ClashCore, inquiry: Inquiry, hour: Hour) -> DayClash:
    try:
        return clash_of(core, inquiry, hour)
    except TimeIsUp:
        return DayClash(
            f"{and_list(core.breads)} can't all be done on time", core.breads, "searched", inquiry.is_certain
        )


def _too_many(day: Day, inquiry: Inquiry) -> DayClash:
    words = "there is no plan that has all on time, and no few breads alone are in each other's way"
    if not inquiry.is_certain:
        words = "no plan was found that has all on time, which does not prove that there is none"
    return DayClash(words, day.breads, "searched", inquiry.is_certain)
