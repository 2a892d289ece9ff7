"""Nothing is missing and nothing stands twice: each job has its one beginning, each load its one deck."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator

from manchet.day.model import Day, Timetable
from manchet.day.rules.refusal import Refusal


def whole(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """The plan says as much as the day asks, and all that the day names is there. No other rule can be looked at before."""
    yield from _counts(day, timetable)
    yield from _names(day)
    yield from _numbers(day, timetable)


def _counts(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    for what, there, wanted in (
        ("beginnings", timetable.starts, day.jobs),
        ("shifts", timetable.shifts, day.jobs),
        ("decks", timetable.decks, day.loads),
    ):
        if len(there) != len(wanted):
            yield Refusal("whole", f"{len(there)} {what} are planned, and {len(wanted)} are wanted")


def _names(day: Day) -> Iterator[Refusal]:
    for what, names in (
        ("job", [job.key for job in day.jobs]),
        ("load", [load.key for load in day.loads]),
        ("oven", [oven.name for oven in day.ovens]),
        ("mixer", [mixer.name for mixer in day.mixers]),
        ("place", [place.name for place in day.places]),
        ("shift", [shift.key for shift in day.shifts]),
    ):
        for name, number in Counter(names).items():
            if number > 1:
                yield Refusal("whole", f"the {what} “{name}” stands {number} times in the day")
    for what, asked, known in (
        ("oven", [load.oven for load in day.loads], [oven.name for oven in day.ovens]),
        ("oven", [fire.oven for fire in day.fires], [oven.name for oven in day.ovens]),
        ("mixer", [job.mixer for job in day.jobs if job.mixer], [mixer.name for mixer in day.mixers]),
        ("place", [stay.place for stay in day.stays], [place.name for place in day.places]),
        ("shift", [job.shift for job in day.jobs if job.shift], [shift.key for shift in day.shifts]),
    ):
        for name in sorted({*asked} - {*known}):
            yield Refusal("whole", f"the day has no {what} “{name}”")


def _numbers(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    for job in sorted({*_jobs_named(day)}):
        if not 0 <= job < len(day.jobs):
            yield Refusal("whole", f"the day has no job number {job}")
    for job, shift in enumerate(timetable.shifts):
        if not -1 <= shift < len(day.shifts):
            yield Refusal("whole", f"the day has no shift number {shift}", jobs=(job,))
    decks = {oven.name: oven.decks for oven in day.ovens}
    for number, (load, deck) in enumerate(zip(day.loads, timetable.decks, strict=False)):
        if load.oven in decks and not 0 <= deck < decks[load.oven]:
            yield Refusal(
                "whole", f"{load.oven} has no deck number {deck}, where {load.key} is to bake", loads=(number,)
            )


def _jobs_named(day: Day) -> Iterable[int]:
    for wait in day.waits:
        yield from (wait.before, wait.after)
    for load in day.loads:
        yield from (load.put, load.take)
    for stay in day.stays:
        yield from (stay.begins, stay.ends)
    for mixer in day.mixers:
        for before, after, _ in mixer.gaps:
            yield from (before, after)
    yield from (fire.light for fire in day.fires)
    yield from (end.job for end in day.ends)
