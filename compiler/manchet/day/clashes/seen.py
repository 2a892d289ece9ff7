"""What clashes without any search: a thing too small, an oven never so hot, hours in which nobody is there, waits too long."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.clashes.values import DayClash, Hour
from manchet.day.clashes.words import and_list, breads_of, job_of, some
from manchet.day.goals import closes_at
from manchet.day.model import Day
from manchet.day.windows import in_shifts, lags_of, windows_of
from manchet.records import NamedTuple


def clashes_seen(day: Day, hour: Hour) -> tuple[DayClash, ...]:
    """Of a day in which nothing may be late."""
    found = (*_too_small(day), *_never_so_hot(day))
    return found or tuple(_nobody_there_for(day, hour)) or tuple(_too_long(day, hour))


def _too_small(day: Day) -> Iterator[DayClash]:
    holds = {place.name: place.holds for place in day.places}
    for stay in day.stays:
        if stay.takes > holds[stay.place]:
            breads = breads_of(day, [stay.begins])
            yield DayClash(
                f"{stay.place} holds {holds[stay.place]}, and {and_list(breads)} wants {stay.takes} at once",
                breads,
                "seen",
            )
    for load in day.loads:
        if load.share > 1:
            words = f"{load.pieces} {load.noun} of {load.bread} go in at once, and a deck of {load.oven} does not hold so many"
            yield DayClash(words, (load.bread,), "seen")


def _never_so_hot(day: Day) -> Iterator[DayClash]:
    fires = {fire.oven for fire in day.fires}
    ovens = {oven.name: oven for oven in day.ovens}
    for load in day.loads:
        oven = ovens[load.oven]
        if not oven.curve or load.at_the_mouth:
            continue
        if oven.name not in fires:
            yield DayClash(f"{load.bread} bakes in {oven.name}, which is not fired on this day", (load.bread,), "seen")
        elif load.enters is not None and closes_at(oven, load) < 0:
            words = (
                f"{load.bread} goes in at {round(load.enters.low)} C at least, "
                f"and {oven.name} has {round(oven.curve[0].celsius)} C when its fire is out"
            )
            yield DayClash(words, (load.bread,), "seen")


def _nobody_there_for(day: Day, hour: Hour) -> Iterator[DayClash]:
    """Jobs that their waits and ends bind to hours in which nobody is there, told gap by gap."""
    spans = windows_of(day, with_shifts=False)
    if any(span.low > span.high for span in spans):
        return
    gaps: dict[tuple[int | None, int | None], list[int]] = {}
    for number, span in enumerate(spans):
        reached = in_shifts(day, day.jobs[number], span)
        if reached.low > reached.high:
            gone = max((shift.ends for shift in day.shifts if shift.begins < span.low), default=None)
            ends = span.high + day.jobs[number].minutes
            come = min((shift.begins for shift in day.shifts if shift.ends > ends), default=None)
            gaps.setdefault((gone, come), []).append(number)
    for (left, back), jobs in gaps.items():
        breads = breads_of(day, jobs)
        first = jobs[0]
        when = f"between {hour(spans[first].low)} and {hour(spans[first].high)}"
        if spans[first].low == spans[first].high:
            when = f"at {hour(spans[first].low)}"
        others = [bread for bread in breads if bread not in day.jobs[first].breads]
        more = f", and so it is with {some(others)}" if others else ""
        yield DayClash(
            f"{_nobody(left, back, hour)}, and {job_of(day, first)} would have to begin {when}{more}", breads, "seen"
        )


def _nobody(gone: int | None, come: int | None, hour: Hour) -> str:
    if gone is not None and come is not None and gone < come:
        return f"from {hour(gone)} to {hour(come)} nobody is there"
    if gone is None and come is not None:
        return f"nobody is there before {hour(come)}"
    if come is None and gone is not None:
        return f"nobody is there after {hour(gone)}"
    return "there is no shift with the time and the hands"


class _Reach(NamedTuple):
    """The first minute at which a job can begin (or the last), as if somebody were always there, and why not sooner (later)."""

    minute: int
    reason: str
    """"age" or "window" of its end; "own", its own minutes; or "job", through another."""
    through: int = -1
    """Which job, for "job"."""


def _too_long(day: Day, hour: Hour) -> Iterator[DayClash]:
    """Of all jobs that can begin at no time the one of which the least has to be told."""
    first, last = _reach(day, is_first=True), _reach(day, is_first=False)
    cannot = [number for number in range(len(day.jobs)) if first[number].minute > last[number].minute]
    if not cannot:
        return
    number = min(cannot, key=lambda number: len(_way(first, number)) + len(_way(last, number)))
    sooner, later = _way(first, number), _way(last, number)
    words = (
        f"{job_of(day, number)} would have to begin by {hour(last[number].minute)}, {_not_later(day, hour, last, later[-1])}; "
        f"it can't before {hour(first[number].minute)}, {_not_sooner(day, hour, first, sooner[-1])}"
    )
    yield DayClash(words, breads_of(day, [*sooner, *later]), "seen")


def _way(reach: list[_Reach], number: int) -> list[int]:
    """From a job to the one that holds it up, through others that it is bound to."""
    way = [number]
    while reach[way[-1]].reason == "job" and reach[way[-1]].through not in way:
        way.append(reach[way[-1]].through)
    return way


def _reach(day: Day, *, is_first: bool) -> list[_Reach]:
    """Longest ways through all waits: forward from the first minutes, or back from the last."""
    limit = day.finishes if is_first else day.begins
    reach = [_own_reach(day, number, is_first=is_first) for number in range(len(day.jobs))]
    lags = list(lags_of(day))
    sign = 1 if is_first else -1
    moved = True
    while moved:
        moved = False
        for lag in lags:
            known, other = (lag.earlier, lag.later) if is_first else (lag.later, lag.earlier)
            minute = reach[known].minute + sign * lag.minutes
            if sign * minute > sign * reach[other].minute and sign * reach[other].minute <= sign * limit:
                reach[other] = _Reach(minute, "job", known)
                moved = True
    return reach


def _own_reach(day: Day, number: int, *, is_first: bool) -> _Reach:
    job = day.jobs[number]
    if not is_first:
        return _Reach(min(job.latest, day.finishes - job.minutes), "own")
    least = [(max(job.earliest, day.begins), "own")]
    for end in day.ends:
        if end.job == number and end.not_before is not None:
            least.append((end.not_before - end.after - job.minutes, "window"))
        if end.job == number and end.oldest is not None:
            least.append((end.due - end.oldest - job.minutes, "age"))
    return _Reach(*max(least))


def _not_later(day: Day, hour: Hour, last: list[_Reach], number: int) -> str:
    ends = [end for end in day.ends if end.job == number]
    if ends:
        end = min(ends, key=lambda end: end.due - end.after)
        return f"for {end.bread} to be {end.word} by {hour(end.due)}"
    return f"since {job_of(day, number)} begins by {hour(last[number].minute)}"


def _not_sooner(day: Day, hour: Hour, first: list[_Reach], number: int) -> str:
    minute = first[number].minute
    match first[number].reason:
        case "age":
            return f"or {and_list(day.jobs[number].breads)} would be too old when it is due"
        case "window":
            return f"or {and_list(day.jobs[number].breads)} would be there too soon"
        case _ if minute <= day.begins:
            return f"since the day begins at {hour(day.begins)}"
        case _:
            return f"since {job_of(day, number)} can't begin before {hour(minute)}"
