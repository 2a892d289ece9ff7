"""Four steps, from what anybody sees to what has to be searched: the first that finds something speaks."""

from __future__ import annotations

from collections.abc import Callable

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
    strict = on_time(day)
    found = clashes_seen(strict, hour) or clashes_counted(strict, hour)
    cores: tuple[ClashCore, ...] = ()
    if not found:
        if inquiry.plan(strict) is not None:
            return None
        cores = _searched(day, inquiry)
        found = tuple(_told(core, inquiry, hour, is_only=len(cores) == 1) for core in cores) or (
            _too_many(day, inquiry),
        )
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


def _searched(day: Day, inquiry: Inquiry) -> tuple[ClashCore, ...]:
    """A smallest set, and another among the breads that are not in it, as long as these clash too."""
    cores: list[ClashCore] = []
    rest = day
    try:
        while len(cores) < MOST_CLASHES and inquiry.plan(on_time(rest)) is None:
            core = smallest(rest, inquiry)
            if core is None:
                break
            cores.append(core)
            rest = without(rest, frozenset(core.breads))
    except TimeIsUp:
        pass
    return tuple(cores)


def _told(core: ClashCore, inquiry: Inquiry, hour: Hour, *, is_only: bool) -> DayClash:
    try:
        return clash_of(core, inquiry, hour, is_only=is_only)
    except TimeIsUp:
        return DayClash(
            f"{and_list(core.breads)} can't all be done on time", core.breads, "searched", inquiry.is_certain
        )


def _too_many(day: Day, inquiry: Inquiry) -> DayClash:
    words = "there is no plan that has all on time, and no few breads alone are in each other's way"
    if not inquiry.is_certain:
        words = "no plan was found that has all on time, which does not prove that there is none"
    return DayClash(words, day.breads, "searched", inquiry.is_certain)
