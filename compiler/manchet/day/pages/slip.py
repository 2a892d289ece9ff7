"""By how many minutes jobs may begin later than planned while all others stay where they are."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from manchet.day.goals import minute_of_curve, opens_at
from manchet.day.model import BREAK_BEFORE_OUT, Day, Timetable


def slip(day: Day, timetable: Timetable, jobs: Iterable[int]) -> int:
    """Minutes by which these jobs may begin later, all by the same, so that no other job moves and no rule is broken.

    0 for what puts a load in or takes it out: the other of the two would move. A wait that is longer than its range already
    gives none; `may wait` is not counted.
    """
    moved = frozenset(jobs)
    if any(load.put in moved or load.take in moved for load in day.loads):
        return 0
    rest = min(
        [
            *_by_themselves(day, timetable, moved),
            *_by_waits(day, timetable, moved),
            *_by_mixers(day, timetable, moved),
            *_by_fires(day, timetable, moved),
        ]
    )
    rest = min([rest, *(_by_hands(day, timetable, moved, shift, rest) for shift in range(len(day.shifts)))])
    return max(min([rest, *(_by_place(day, timetable, moved, place.name, rest) for place in day.places)]), 0)


def slips(day: Day, timetable: Timetable) -> tuple[int, ...]:
    """Of each job by itself."""
    return tuple(slip(day, timetable, (at,)) for at in range(len(day.jobs)))


def _by_themselves(day: Day, timetable: Timetable, moved: frozenset[int]) -> Iterator[int]:
    for at in moved:
        job, start = day.jobs[at], timetable.starts[at]
        yield job.latest - start
        yield day.finishes - start - job.minutes
        if timetable.shifts[at] >= 0:
            yield day.shifts[timetable.shifts[at]].ends - start - job.minutes
        if job.is_break:
            outs = (timetable.starts[load.take] for load in day.loads)
            yield from (out - BREAK_BEFORE_OUT - start - job.minutes for out in outs if out >= start + job.minutes)
    for end in day.ends:
        if end.job in moved:
            yield end.due - end.after - timetable.starts[end.job] - day.jobs[end.job].minutes


def _by_waits(day: Day, timetable: Timetable, moved: frozenset[int]) -> Iterator[int]:
    for wait in day.waits:
        stands = timetable.starts[wait.after] - timetable.starts[wait.before]
        if wait.before in moved and wait.after not in moved:
            yield stands - wait.least
        elif wait.after in moved and wait.before not in moved and wait.most is not None:
            yield wait.most - stands


def _by_mixers(day: Day, timetable: Timetable, moved: frozenset[int]) -> Iterator[int]:
    """Up to the next that has the machine, with the washing between them; of several machines as of one."""
    for mixer in day.mixers:
        gaps = {(before, after): minutes for before, after, minutes in mixer.gaps}
        users = [at for at, job in enumerate(day.jobs) if job.mixer == mixer.name]
        for at in moved.intersection(users):
            end = timetable.starts[at] + day.jobs[at].minutes
            for other in users:
                if other not in moved and timetable.starts[other] >= end:
                    yield timetable.starts[other] - end - gaps.get((at, other), 0)
            yield from (begins - end for begins, _ in mixer.away if begins >= end)


def _by_fires(day: Day, timetable: Timetable, moved: frozenset[int]) -> Iterator[int]:
    """Lit later, a falling oven is hotter when each load goes in; one that holds its heat is only to be hot by then."""
    for fire in day.fires:
        if fire.light not in moved:
            continue
        oven = next(oven for oven in day.ovens if oven.name == fire.oven)
        out = timetable.starts[fire.light] + fire.heats
        for load in day.loads:
            start = timetable.starts[load.put]
            if load.oven != fire.oven or start < timetable.starts[fire.light]:
                continue
            yield start - out if start >= out else 0
            minute = minute_of_curve(day, timetable, load) if oven.curve else None
            if minute is not None and minute >= 0 and load.enters is not None:
                yield minute - opens_at(oven, load)


def _by_hands(day: Day, timetable: Timetable, moved: frozenset[int], shift: int, most: int) -> int:
    """Up to the first minute at which a shift would want more hands than it has."""
    mine = [at for at, by in enumerate(timetable.shifts) if by == shift]
    moving = [at for at in mine if at in moved]
    if not moving:
        return most
    busy: dict[int, int] = {}
    for at in mine:
        if at not in moved:
            for minute in range(timetable.starts[at], timetable.starts[at] + day.jobs[at].minutes):
                busy[minute] = busy.get(minute, 0) + day.jobs[at].hands
    for later in range(1, most + 1):
        for at in moving:
            last = timetable.starts[at] + day.jobs[at].minutes - 1 + later
            wanted = sum(
                day.jobs[one].hands
                for one in moving
                if timetable.starts[one] + later <= last < timetable.starts[one] + later + day.jobs[one].minutes
            )
            if busy.get(last, 0) + wanted > day.shifts[shift].hands:
                return later - 1
    return most


def _by_place(day: Day, timetable: Timetable, moved: frozenset[int], name: str, most: int) -> int:
    """Up to the first minute at which what is in the way of others has no room: what ends with a moved job stays longer."""
    stays = [stay for stay in day.stays if stay.place == name]
    longer = [stay for stay in stays if stay.ends in moved and stay.begins not in moved]
    if not longer or most <= 0:
        return most
    holds = next(place.holds for place in day.places if place.name == name)
    ends = [(timetable.starts[stay.ends] + day.jobs[stay.ends].minutes, stay) for stay in longer]
    for later in range(1, most + 1):
        for end, _ in ends:
            minute = end + later - 1
            taken = sum(
                stay.takes
                for stay in stays
                if timetable.starts[stay.begins]
                <= minute
                < timetable.starts[stay.ends] + day.jobs[stay.ends].minutes + (later if stay.ends in moved else 0)
            )
            if taken > holds:
                return later - 1
    return most
