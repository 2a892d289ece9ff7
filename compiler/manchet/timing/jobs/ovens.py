"""Loads of several sorts at one oven: one goes in when there is room for it.

The loads of one sort follow one another as they are laid (`network`). Where a bread comes in several loads or mixes, what
would be in the oven beside them waits too; two sorts of one small dough are left as the file has them, and a clash says so.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.figures.oven.curve import oven_of
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.timing.jobs.network import Job, Link
from manchet.timing.jobs.schedule import end_of, forward


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
    loads = list(_loads(jobs, kitchen))
    for _ in range(len(loads) ** 2):
        found = _too_many(jobs, loads)
        if found is None:
            break
        waiting, leaving = found
        first = jobs[waiting.first]
        changed = first._replace(needs=(*first.needs, Link(leaving.last, "oven")))
        jobs, places = _in_order((*jobs[: waiting.first], changed, *jobs[waiting.first + 1 :]))
        loads = [load._replace(first=places[load.first], last=places[load.last]) for load in loads]
    return jobs


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


def _too_many(jobs: tuple[Job, ...], loads: Sequence[_InOven]) -> tuple[_InOven, _InOven] | None:
    """The first load that finds no room when it goes in, and the one in the oven that is out first."""
    starts = forward(jobs)
    for load in sorted(loads, key=lambda one: (starts[one.first], one.first)):
        now = starts[load.first]
        inside = [
            other
            for other in loads
            if other.oven == load.oven and other != load
            if (starts[other.first], other.first) < (now, load.first) and end_of(jobs, starts, other.last) > now
        ]
        if inside and load.room + sum((other.room for other in inside), Fraction(0)) > 1:
            return load, min(inside, key=lambda one: (end_of(jobs, starts, one.last), one.first))
    return None


def _in_order(jobs: tuple[Job, ...]) -> tuple[tuple[Job, ...], dict[int, int]]:
    """The jobs, each again after all it needs, as near to their order as that goes; and where each stands now."""
    places: dict[int, int] = {}
    waiting = list(range(len(jobs)))
    while waiting:
        at = next(at for at in waiting if all(need.job in places for need in jobs[at].needs))
        places[at] = len(places)
        waiting.remove(at)
    ordered = sorted(places, key=lambda at: places[at])
    return tuple(
        jobs[at]._replace(needs=tuple(need._replace(job=places[need.job]) for need in jobs[at].needs)) for at in ordered
    ), places
