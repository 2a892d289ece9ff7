"""Why a load goes in no sooner, and why a wait is longer than its range: read off the plan, whoever made it."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum

from manchet.day.goals import beyond, minute_of_curve
from manchet.day.model import DayLoad, DayWait
from manchet.day.pages.day_plan import DayPlan
from manchet.day.together import between
from manchet.day.windows import minutes_in_heat
from manchet.records import NamedTuple

WORTH_SAYING = 5
"""Minutes: who could have gone in less than that sooner waits for nothing. Our own rule."""


class Why(Enum):
    """What a load waits for."""

    FLOOR = "floor"
    """The floor is too hot for it."""
    OVEN = "oven"
    """Another load is in."""
    BESIDE = "beside"
    """It goes in beside another."""
    HANDS = "hands"
    """Whoever puts it in does something else, or is not there yet."""


class LoadWaits(NamedTuple):
    """One load could have gone in sooner, by its dough."""

    load: int
    why: Why
    other: int = -1
    """The load that is in its way or goes in beside it; of hands, the job that is done first, -1 where nobody is there."""
    minute: int = 0
    """When it goes in."""


class StandsOver(NamedTuple):
    """A wait is longer than its range, as it may be."""

    wait: DayWait
    minutes: int
    nobody: tuple[int, int] | None
    """From when to when nobody is there, where that is why."""


def loads_that_wait(plan: DayPlan) -> tuple[LoadWaits, ...]:
    """In the order they go in; what is put in as soon as its dough is ready is left out."""
    return tuple(found for number in plan.loads_in_order() if (found := _why(plan, number)) is not None)


def _why(plan: DayPlan, number: int) -> LoadWaits | None:
    load, start = plan.day.loads[number], plan.begins(plan.day.loads[number].put)
    ready = [plan.begins(wait.before) + wait.least for wait in plan.day.waits if wait.after == load.put]
    if not ready or start - max(ready) < WORTH_SAYING:
        return None
    oven = next(oven for oven in plan.day.ovens if oven.name == load.oven)
    minute = minute_of_curve(plan.day, plan.timetable, load) if oven.curve else None
    if minute is not None and minute - minutes_in_heat(oven, load)[0] <= 1:
        return LoadWaits(number, Why.FLOOR, minute=start)
    others = [at for at in plan.loads_in_order() if at != number and plan.day.loads[at].oven == load.oven]
    for at in others:
        if 0 <= start - plan.begins(plan.day.loads[at].put) <= oven.within:
            return LoadWaits(number, Why.BESIDE, at, start)
    for at in reversed(others):
        free = _out(plan, plan.day.loads[at]) + between(oven, plan.day.loads[at], load)
        if plan.timetable.decks[at] == plan.timetable.decks[number] and 0 <= start - free <= 1:
            return LoadWaits(number, Why.OVEN, at, start)
    return _by_hands(plan, number, load, start)


def _out(plan: DayPlan, load: DayLoad) -> int:
    return plan.ends(load.take)


def _by_hands(plan: DayPlan, number: int, load: DayLoad, start: int) -> LoadWaits | None:
    shift = plan.timetable.shifts[load.put]
    if shift < 0:
        return None
    if start == plan.day.shifts[shift].begins:
        return LoadWaits(number, Why.HANDS, minute=start)
    busy = [at for at in plan.of_shift(shift) if at != load.put and plan.ends(at) == start]
    return LoadWaits(number, Why.HANDS, busy[-1], start) if busy else None


def waits_beyond(plan: DayPlan) -> Iterator[StandsOver]:
    """By the end of the wait."""
    over = [wait for wait in plan.day.waits if beyond(wait, plan.timetable)]
    for wait in sorted(over, key=lambda one: plan.begins(one.after)):
        yield StandsOver(wait, beyond(wait, plan.timetable), _nobody(plan, wait))


def _nobody(plan: DayPlan, wait: DayWait) -> tuple[int, int] | None:
    """The house was empty until the shift that ends the wait, and its range ended meanwhile."""
    number = plan.timetable.shifts[wait.after]
    if number < 0 or wait.most is None:
        return None
    came = plan.day.shifts[number].begins
    left = max((shift.ends for shift in plan.day.shifts if shift.ends < came), default=None)
    there = any(shift.begins < came <= shift.ends for shift in plan.day.shifts)
    ripe = plan.begins(wait.before) + wait.most
    return (left, came) if left is not None and not there and left <= ripe < came + WORTH_SAYING else None
