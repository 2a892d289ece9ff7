"""Planning again without a solver: what still holds is kept, and what doesn't moves later, no more than it must, all in the order
that it had. Where that leads nowhere, or to being later or beyond a range, planning the rest of the day anew is tried too."""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Callable, Iterator

from manchet.day.again.fixing import Again
from manchet.day.again.moves import cost_again
from manchet.day.again.order import floors_kept, order_kept
from manchet.day.checking import check
from manchet.day.goals import late
from manchet.day.model import Day, Timetable
from manchet.day.windows import Lag

HANDED_OVER = 8
"""So many times what a shift can no longer do is handed over to another, each time for one more round."""

Plans = Callable[[Day], Timetable | None]
"""Whoever plans a day from nothing; None where none is found."""


def plan_kept(again: Again, anew: Plans) -> Timetable | None:
    """The plan last written with as little changed as it takes; None where no way is found.

    Moved later by as little as can be, and handed over where a shift has gone by then, first within the ranges that waits had, then as far as they may be and heats may fall,
    then beyond; the best of these by the goals of planning again.
    """
    kept = [plan for plan in _moved_later(again) if not check(again.day, plan)]
    best = min((cost_again(again, plan) for plan in kept), default=None)
    if best is None or best[:2] > (late(again.before, again.last), 0):
        plan = anew(again.day)
        kept += [] if plan is None or check(again.day, plan) else [plan]
    return min(kept, key=lambda plan: cost_again(again, plan), default=None)


def _moved_later(again: Again) -> Iterator[Timetable]:
    within = again.own._replace(waits=tuple(wait._replace(may=0) for wait in again.own.waits))
    for day in (within, again.own, again.day):
        ranges = (*_ranges(again, day), *floors_kept(again, day))
        shifts = tuple(shift if job.hands else -1 for job, shift in zip(again.day.jobs, again.last.shifts, strict=True))
        for _ in range(HANDED_OVER):
            starts = _later(again, (*order_kept(again, shifts), *ranges), shifts)
            if starts is None:
                break
            yield Timetable(starts, shifts, again.last.decks)
            there = tuple(_shift_there(again, at, start, shifts[at]) for at, start in enumerate(starts))
            if there == shifts:
                break
            shifts = there


def _shift_there(again: Again, at: int, start: int, shift: int) -> int:
    """Who does a job that now begins then: whose it is, if they are still there, else the first who is or who next comes."""
    job, shifts = again.day.jobs[at], again.day.shifts
    if shift < 0 or job.shift or start + job.minutes <= shifts[shift].ends:
        return shift
    able = [
        (max(its.begins, start), number)
        for number, its in enumerate(shifts)
        if its.hands >= job.hands and max(its.begins, start) + job.minutes <= its.ends
    ]
    return min(able, default=(start, shift))[1]


def _ranges(again: Again, day: Day) -> Iterator[Lag]:
    """Waits and loads. A wait that was longer than its range may be so again."""
    for wait in day.waits:
        if wait.after in again.begun:
            continue
        yield Lag(wait.before, wait.after, wait.least)
        if wait.most is not None:
            was = again.was[wait.after] - again.was[wait.before]
            yield Lag(wait.after, wait.before, -max(wait.most + wait.may, was))
    for load in day.loads:
        yield Lag(load.put, load.take, load.stays)
        yield Lag(load.take, load.put, -load.stays)


def _later(again: Again, lags: tuple[Lag, ...], shifts: tuple[int, ...]) -> tuple[int, ...] | None:
    """The first minutes, none before the job's own, at which all lags hold; None where a job would begin after its last."""
    jobs = again.day.jobs
    comes = [again.day.shifts[shift].begins if shift >= 0 else again.day.begins for shift in shifts]
    starts = [max(was, job.earliest, at) for was, job, at in zip(again.was, jobs, comes, strict=True)]
    following: dict[int, list[Lag]] = defaultdict(list)
    for lag in lags:
        following[lag.earlier].append(lag)
    raised = deque(range(len(jobs)))
    waiting = set(raised)
    while raised:
        job = raised.popleft()
        waiting.discard(job)
        if starts[job] > jobs[job].latest:
            return None
        for lag in following[job]:
            if starts[lag.later] < starts[job] + lag.minutes:
                starts[lag.later] = starts[job] + lag.minutes
                if lag.later not in waiting:
                    raised.append(lag.later)
                    waiting.add(lag.later)
    return tuple(starts)
