"""What went before what in the plan last written, as minutes that must lie between: kept, it needs no new decision."""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence
from itertools import combinations

from manchet.day.again.fixing import Again
from manchet.day.goals import closes_at, opens_at
from manchet.day.model import BREAK_BEFORE_OUT, Day, DayLoad, DayOven, Fire
from manchet.day.together import between
from manchet.day.windows import Lag
from manchet.records import NamedTuple


class Taking(NamedTuple):
    """Something is taken from the beginning of one job to the end of another."""

    begins: int
    ends: int


def order_kept(again: Again, shifts: Sequence[int]) -> Iterator[Lag]:
    """Between all that take the same hands, mixers, places, decks and fires, where these shifts do the jobs."""
    day, last = again.day, again.last
    handed_over = {at for at, (shift, was) in enumerate(zip(shifts, last.shifts, strict=True)) if shift != was}
    for number in range(len(day.shifts)):
        jobs = [Taking(at, at) for at, shift in enumerate(shifts) if shift == number]
        yield from _turns(again, jobs, handed_over)
    for mixer in day.mixers:
        jobs = [Taking(at, at) for at, job in enumerate(day.jobs) if job.mixer == mixer.name]
        yield from _turns(again, jobs)
        for before, after, minutes in mixer.gaps:
            length = day.jobs[before].minutes
            apart = last.starts[after] - last.starts[before] - again.before.jobs[before].minutes
            if after not in again.begun and apart >= minutes:
                yield Lag(before, after, length + minutes)
    for place in day.places:
        yield from _turns(again, [Taking(stay.begins, stay.ends) for stay in day.stays if stay.place == place.name])
    yield from _breaks(again)
    for oven in day.ovens:
        yield from _oven(again, oven)


def _turns(again: Again, takings: list[Taking], handed_over: Container[int] = ()) -> Iterator[Lag]:
    """Two that did not overlap do not overlap now, so no more lie over one another than did; what was another shift's overlaps
    nothing. Only the next ones of each are named: what comes after these comes after it, too."""
    jobs, before, starts = again.day.jobs, again.before.jobs, again.last.starts
    inside = sorted(takings, key=lambda taking: (starts[taking.begins], taking))
    for at, taking in enumerate(inside):
        over = starts[taking.ends] + before[taking.ends].minutes
        until: int | None = None
        for other in inside[at + 1 :]:
            begins, ends = starts[other.begins], starts[other.ends] + before[other.ends].minutes
            overlaps = begins < over
            if (overlaps and taking.begins not in handed_over and other.begins not in handed_over) or (
                until is not None and begins >= until
            ):
                continue
            if other.begins not in again.begun:
                yield Lag(taking.ends, other.begins, jobs[taking.ends].minutes)
                until = until if overlaps else min(ends, ends if until is None else until)
            elif taking.begins not in again.begun:
                yield Lag(other.ends, taking.begins, jobs[other.ends].minutes)


def _breaks(again: Again) -> Iterator[Lag]:
    last = again.last
    for at, job in enumerate(again.day.jobs):
        for load in again.day.loads if job.is_break and at not in again.begun else ():
            if last.starts[at] >= last.starts[load.take]:
                yield Lag(load.take, at, 0)
            elif load.take not in again.begun:
                yield Lag(at, load.take, job.minutes + BREAK_BEFORE_OUT)


def _oven(again: Again, oven: DayOven) -> Iterator[Lag]:
    day, starts, decks = again.day, again.last.starts, again.last.decks
    loads = sorted(
        (at for at, load in enumerate(day.loads) if load.oven == oven.name), key=lambda at: starts[day.loads[at].put]
    )
    for one, other in combinations(loads, 2):
        apart = starts[day.loads[other].put] - starts[day.loads[one].put]
        first, second = day.loads[one], day.loads[other]
        if second.put in again.begun:
            first, second = second, first
        if second.put in again.begun:
            continue
        if apart > oven.within and decks[one] == decks[other]:
            yield Lag(first.put, second.put, _inside(day, first) + between(oven, first, second))
        elif apart > oven.within and oven.curve:
            yield Lag(first.put, second.put, oven.within + 1)
        elif apart <= oven.within:
            yield Lag(first.put, second.put, -oven.within)
            yield Lag(second.put, first.put, -oven.within)
    for fire in day.fires:
        if fire.oven == oven.name:
            for at in loads:
                yield from _beside_fire(again, oven, fire, day.loads[at])


def _inside(day: Day, load: DayLoad) -> int:
    """Minutes that it has the oven."""
    return load.stays + day.jobs[load.take].minutes


def _beside_fire(again: Again, oven: DayOven, fire: Fire, load: DayLoad) -> Iterator[Lag]:
    """It stays on its side of a fire: in before it, at the mouth while it burns, or behind it."""
    put, lit = again.last.starts[load.put], again.last.starts[fire.light]
    if load.put in again.begun:
        yield from () if put >= lit else (Lag(load.put, fire.light, _inside(again.day, load)),)
    elif put >= lit + fire.heats:
        yield Lag(fire.light, load.put, fire.heats)
    elif put >= lit:
        yield Lag(fire.light, load.put, max(fire.heats - oven.mouth_from, 0))
        yield Lag(load.put, fire.light, _inside(again.day, load) + oven.mouth_until - fire.heats)
    else:
        yield Lag(load.put, fire.light, _inside(again.day, load))


def floors_kept(again: Again, day: Day) -> Iterator[Lag]:
    """The minutes of the curve in which each load finds a floor in its heats, of a day with these; what goes in before it stays
    the same."""
    last = again.last
    ovens = {oven.name: oven for oven in day.ovens if oven.curve}
    for load in day.loads:
        if load.oven not in ovens or load.enters is None or load.put in again.begun:
            continue
        oven, start = ovens[load.oven], last.starts[load.put]
        lit = [fire for fire in day.fires if fire.oven == oven.name and last.starts[fire.light] + fire.heats <= start]
        if not lit:
            continue
        fire = max(lit, key=lambda fire: last.starts[fire.light])
        out = last.starts[fire.light] + fire.heats
        taken = sum(
            other.extra
            for other in day.loads
            if other.oven == oven.name and out <= last.starts[other.put] < start - oven.within
        )
        yield Lag(fire.light, load.put, fire.heats + opens_at(oven, load) - taken)
        yield Lag(load.put, fire.light, taken - closes_at(oven, load) - fire.heats)
