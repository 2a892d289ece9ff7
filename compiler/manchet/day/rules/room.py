"""Mixers, and places that run out: fridges, provers, baskets, tins."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from manchet.day.model import Day, DayMixer, DayPlace, Timetable
from manchet.day.rules.refusal import Refusal, ends_of

Machines = tuple[tuple[int, ...], ...]
"""Of each mixer of a kind, the jobs that it did and that may still keep it from another; a canonical order."""


def mixer(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """The jobs of a kind of mixer can be shared out among as many as there are, washed between them; none while it is away."""
    ends = ends_of(day, timetable)
    for kind in day.mixers:
        jobs = sorted(
            (at for at, job in enumerate(day.jobs) if job.mixer == kind.name),
            key=lambda at: (timetable.starts[at], at),
        )
        for at in jobs:
            for gone, back in kind.away:
                if timetable.starts[at] < back and gone < ends[at]:
                    first = max(gone, timetable.starts[at])
                    words = f"{day.jobs[at].key} has {kind.name} at {first}, which is away from {gone} to {back}"
                    yield Refusal("mixer", words, (at,), (), first)
        last = _without_a_machine(kind, jobs, timetable.starts, ends)
        if last is not None:
            start = timetable.starts[last]
            words = f"{day.jobs[last].key} finds no {kind.name} free and clean at {start}; there are {kind.number}"
            yield Refusal("mixer", words, (last,), (), start)


def _without_a_machine(kind: DayMixer, jobs: list[int], starts: tuple[int, ...], ends: tuple[int, ...]) -> int | None:
    """The first job that has none, however those before it are shared out."""
    gaps = {(before, after): minutes for before, after, minutes in kind.gaps}
    longest = max([0, *gaps.values()])
    ways: set[Machines] = {((),) * kind.number}
    for at in jobs:
        ways = {
            tuple(sorted((*way[:one], (*way[one], at), *way[one + 1 :])))
            for way in (
                tuple(tuple(job for job in machine if ends[job] + longest > starts[at]) for machine in each)
                for each in ways
            )
            for one in range(kind.number)
            if all(ends[job] + gaps.get((job, at), 0) <= starts[at] for job in way[one])
        }
        if not ways:
            return at
    return None


def place(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """In no minute are more of a place's units taken than it holds; none while it is away."""
    ends = ends_of(day, timetable)
    for each in day.places:
        taken: Counter[int] = Counter()
        for stay in day.stays:
            if stay.place == each.name:
                for minute in range(timetable.starts[stay.begins], ends[stay.ends]):
                    taken[minute] += stay.takes
        over = [minute for minute, units in taken.items() if units > _holds(each, minute)]
        if over:
            first = min(over)
            words = f"{taken[first]} are in {each.name} at {first}, and it holds {_holds(each, first)}"
            yield Refusal("place", words, (), (), first, each.name)


def _holds(place: DayPlace, minute: int) -> int:
    return 0 if any(gone <= minute < back for gone, back in place.away) else place.holds
