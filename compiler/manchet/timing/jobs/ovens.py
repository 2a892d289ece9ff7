"""Loads of several sorts at one oven: one goes in when there is room for it.

The loads of one sort follow one another as they are laid (`network`). Where a bread comes in several loads or mixes, what
would be in the oven beside them waits too; two sorts of one small dough are left as the file has them, and a clash says so.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from heapq import heappop, heappush

from manchet.figures.oven.curve import oven_of
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.timing.jobs.network import Job, Link
from manchet.timing.jobs.schedule import ZERO, followers_of


class _InOven(NamedTuple):
    """A load, from the job that puts it in to the one that ends its last phase."""

    first: int
    last: int
    oven: str
    room: Fraction


def in_turn(jobs: tuple[Job, ...], kitchen: Kitchen) -> tuple[Job, ...]:
    """The jobs, none of whose loads goes into an oven that has no room for it."""
    if not any(job.room and (job.loads > 1 or job.of) for job in jobs):
        return jobs
    waits = _waits(jobs, {load.first: load for load in _loads(jobs, kitchen)})
    return _in_order(
        [job._replace(needs=(*job.needs, *waits[at])) if at in waits else job for at, job in enumerate(jobs)]
    )


def _waits(jobs: Sequence[Job], loads: Mapping[int, _InOven]) -> dict[int, list[Link]]:
    """What each load that finds no room waits for: in order of time, whichever of those in the oven is out first, and so on
    until there is room."""
    after = followers_of(jobs)
    lacking = [sum(1 for need in job.needs if jobs[need.job].is_dough) for job in jobs]
    begins = [ZERO] * len(jobs)
    coming = [(ZERO, at) for at, job in enumerate(jobs) if job.is_dough and not lacking[at]]
    inside: dict[str, list[tuple[Fraction, int]]] = {}
    filled: dict[str, Fraction] = {}
    waits: dict[int, list[Link]] = {}
    while coming:
        now, at = heappop(coming)
        load = loads.get(at)
        if load is not None:
            held = inside.setdefault(load.oven, [])
            while held and held[0][0] <= now:
                filled[load.oven] -= loads[heappop(held)[1]].room
            if held and load.room + filled[load.oven] > 1:
                free, first = held[0]
                waits.setdefault(at, []).append(Link(loads[first].last, "oven"))
                heappush(coming, (free, at))
                continue
            lasts = sum((job.length.planned for job in jobs[at : load.last + 1]), ZERO)
            heappush(held, (now + lasts, at))
            filled[load.oven] = filled.get(load.oven, ZERO) + load.room
        for then in after[at]:
            if jobs[then].is_dough:
                begins[then] = max(begins[then], now + jobs[at].length.planned)
                lacking[then] -= 1
                if not lacking[then]:
                    heappush(coming, (begins[then], then))
    return waits


def _loads(jobs: Sequence[Job], kitchen: Kitchen) -> Iterator[_InOven]:
    for at, job in enumerate(jobs):
        oven = oven_of(job.step, kitchen)
        if not job.goes_in or not job.room or oven is None:
            continue
        last = at
        while (after := _next_phase(jobs, last)) is not None:
            last = after
        yield _InOven(at, last, oven.name, job.room)


def _next_phase(jobs: Sequence[Job], at: int) -> int | None:
    """What is done with the same load after this job, if it is still a part of the bake."""
    after = at + 1
    if after == len(jobs) or not jobs[after].room or jobs[after].goes_in:
        return None
    return after if Link(at, "step") in jobs[after].needs else None


def _in_order(jobs: Sequence[Job]) -> tuple[Job, ...]:
    """The jobs, each again after all it needs, as near to their order as that goes."""
    after = followers_of(jobs)
    lacking = [len(job.needs) for job in jobs]
    free = [at for at, number in enumerate(lacking) if not number]
    places: dict[int, int] = {}
    while free:
        at = heappop(free)
        places[at] = len(places)
        for then in after[at]:
            lacking[then] -= 1
            if not lacking[then]:
                heappush(free, then)
    return tuple(
        jobs[at]._replace(needs=tuple(need._replace(job=places[need.job]) for need in jobs[at].needs)) for at in places
    )
