"""Planning again without a solver: what still holds is kept, and what doesn't moves later, no more than it must, all in the order
that it had. Only where that leads nowhere is the rest of the day planned anew."""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Callable, Iterator

from manchet.day.again.fixing import Again
from manchet.day.again.moves import cost_again
from manchet.day.again.order import floors_kept, order_kept
from manchet.day.checking import check
from manchet.day.model import Day, Timetable
from manchet.day.windows import Lag

Plans = Callable[[Day], Timetable | None]
"""Whoever plans a day from nothing; None where none is found."""


def plan_kept(again: Again, anew: Plans) -> Timetable | None:
    """The plan last written with as little changed as it takes; None where no way is found.

    Moved later by as little as can be, first within the ranges that waits had, then as far as they may be and heats may fall,
    then beyond; the best of these by the goals of planning again.
    """
    found = [plan for plan in _moved_later(again) if not check(again.day, plan)]
    if not found:
        plan = anew(again.day)
        found = [] if plan is None else [plan]
    return min(found, key=lambda plan: cost_again(again, plan), default=None)


def _moved_later(again: Again) -> Iterator[Timetable]:
    within = again.own._replace(waits=tuple(wait._replace(may=0) for wait in again.own.waits))
    lags = tuple(order_kept(again))
    for day in (within, again.own, again.day):
        starts = _later(again, (*lags, *_ranges(again, day), *floors_kept(again, day)))
        if starts is not None:
            jobs = zip(again.day.jobs, again.last.shifts, strict=True)
            yield Timetable(starts, tuple(shift if job.hands else -1 for job, shift in jobs), again.last.decks)


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


def _later(again: Again, lags: tuple[Lag, ...]) -> tuple[int, ...] | None:
    """The first minutes, none before the job's own, at which all lags hold; None where a job would begin after its last."""
    jobs = again.day.jobs
    starts = [max(was, job.earliest) for was, job in zip(again.was, jobs, strict=True)]
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
