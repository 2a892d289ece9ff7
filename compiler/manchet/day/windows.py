"""Between which minutes each job can begin at all: its own two, pulled tight by waits, ends, shifts and the oven's curve."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from manchet.day.goals import closes_at, opens_at
from manchet.day.model import Day, DayJob, DayLoad, DayOven, End, Shift
from manchet.records import NamedTuple


class JobSpan(NamedTuple):
    """The first and the last minute at which a job can begin; it cannot at all where `low` is more than `high`."""

    low: int
    high: int


class Lag(NamedTuple):
    """The later job begins at least so many minutes after the earlier (less than 0: at most so many before it)."""

    earlier: int
    later: int
    minutes: int


def windows_of(day: Day, *, with_shifts: bool = True) -> tuple[JobSpan, ...]:
    """Index for index as `day.jobs`. Every plan of the day lies in these; not everything in these is a plan.

    Without shifts, as if somebody were always there. As soon as one job is found that can begin at no time, what is found so far is given back: its span is empty.
    """
    spans = [_own(day, job) for job in day.jobs]
    for end in day.ends:
        spans[end.job] = _within_end(spans[end.job], end, day.jobs[end.job])
    touching: dict[int, list[Lag]] = defaultdict(list)
    for lag in lags_of(day):
        touching[lag.earlier].append(lag)
        touching[lag.later].append(lag)
    moved_jobs = dict.fromkeys(range(len(spans)))
    while moved_jobs:
        number = next(iter(moved_jobs))
        del moved_jobs[number]
        if with_shifts:
            spans[number] = in_shifts(day, day.jobs[number], spans[number])
        if spans[number].low > spans[number].high:
            break
        for lag in touching[number]:
            for moved, span in _pulled(lag, spans):
                if span != spans[moved]:
                    spans[moved] = span
                    moved_jobs[moved] = None
                if span.low > span.high:
                    return tuple(spans)
    return tuple(spans)


def _own(day: Day, job: DayJob) -> JobSpan:
    return JobSpan(max(job.earliest, day.begins), min(job.latest, day.finishes - job.minutes))


def _within_end(span: JobSpan, end: End, job: DayJob) -> JobSpan:
    low = span.low
    if end.not_before is not None:
        low = max(low, end.not_before - end.after - job.minutes)
    if end.oldest is not None:
        low = max(low, end.due - end.oldest - job.minutes)
    return JobSpan(low, span.high)


def lags_of(day: Day) -> Iterator[Lag]:
    """What waits, loads and the only fire of an oven say of beginnings."""
    for wait in day.waits:
        yield Lag(wait.before, wait.after, wait.least)
        if wait.most is not None:
            yield Lag(wait.after, wait.before, -wait.most - wait.may)
    for load in day.loads:
        yield Lag(load.put, load.take, load.stays)
        yield Lag(load.take, load.put, -load.stays)
    yield from _lags_of_fires(day)


def _lags_of_fires(day: Day) -> Iterator[Lag]:
    """Of several fires a load may belong to any."""
    for oven in day.ovens:
        fires = [fire for fire in day.fires if fire.oven == oven.name]
        if len(fires) != 1:
            continue
        loads = [load for load in day.loads if load.oven == oven.name]
        for load in loads:
            if load.at_the_mouth:
                yield Lag(fires[0].light, load.put, max(fires[0].heats - oven.mouth_from, 0))
                continue
            first, last = minutes_in_heat(oven, load)
            others = sum(other.extra for other in loads if other != load)
            yield Lag(fires[0].light, load.put, fires[0].heats + max(first - others, 0))
            if last is not None:
                yield Lag(load.put, fires[0].light, -fires[0].heats - last)


def minutes_in_heat(oven: DayOven, load: DayLoad) -> tuple[int, int | None]:
    """The first and the last minute of a falling oven's curve at which a load may go in; (0, None) where any will do."""
    if not oven.curve or load.enters is None:
        return 0, None
    return opens_at(oven, load), closes_at(oven, load)


def _pulled(lag: Lag, spans: list[JobSpan]) -> Iterator[tuple[int, JobSpan]]:
    earlier, later = spans[lag.earlier], spans[lag.later]
    yield lag.later, JobSpan(max(later.low, earlier.low + lag.minutes), later.high)
    yield lag.earlier, JobSpan(earlier.low, min(earlier.high, later.high - lag.minutes))


def in_shifts(day: Day, job: DayJob, span: JobSpan) -> JobSpan:
    """A span whose two ends are minutes at which some shift can begin the job."""
    if job.hands == 0:
        return span
    can = [(max(shift.begins, span.low), min(shift.ends - job.minutes, span.high)) for shift in _able(day, job)]
    can = [(low, high) for low, high in can if low <= high]
    if not can:
        return JobSpan(span.high + 1, span.high) if span.low <= span.high else span
    return JobSpan(min(low for low, _ in can), max(high for _, high in can))


def shifts_for(day: Day, number: int, span: JobSpan) -> tuple[int, ...]:
    """The shifts that can do a job when it begins within a span."""
    job = day.jobs[number]
    return tuple(
        at
        for at, shift in enumerate(day.shifts)
        if shift in _able(day, job) and max(shift.begins, span.low) <= min(shift.ends - job.minutes, span.high)
    )


def _able(day: Day, job: DayJob) -> list[Shift]:
    return [shift for shift in day.shifts if shift.hands >= job.hands and job.shift in ("", shift.key)]
