"""Mixers: so many of a kind, each with one dough at a time, washed between two."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.model import Day, DayMixer
from manchet.day.posting.choices import Choice, Finder, Rule, SoFar
from manchet.day.posting.net import Origin, Tie


def mixer_rules(day: Day) -> Iterator[Rule]:
    for number, mixer in enumerate(day.mixers):
        jobs = tuple(at for at, job in enumerate(day.jobs) if job.mixer == mixer.name)
        if len(jobs) > 1:
            yield Rule(jobs, _finder(day, number, mixer, jobs))


def _finder(day: Day, number: int, mixer: DayMixer, jobs: tuple[int, ...]) -> Finder:
    minutes = {job: day.jobs[job].minutes for job in jobs}
    gaps = {(before, after): wash for before, after, wash in mixer.gaps}
    why = Origin("mixer", number)

    def before(one: int, other: int) -> int:
        return minutes[one] + gaps.get((one, other), 0)

    def ways_out(now: SoFar) -> tuple[Choice, ...] | None:
        starts = now.latest
        machines: list[list[int]] = [[] for _ in range(mixer.number)]
        for job in sorted(jobs, key=lambda job: (-starts[job] - minutes[job], -starts[job], job)):
            in_the_way: list[int] = []
            free: list[tuple[int, int]] = []
            for at, machine in enumerate(machines):
                clashing = [other for other in machine if starts[job] + before(job, other) > starts[other]]
                if clashing:
                    in_the_way += clashing
                else:
                    free.append((min((starts[other] for other in machine), default=day.finishes), at))
            if free:
                machines[min(free)[1]].append(job)
                continue
            group = [job, *in_the_way]
            return tuple(
                Choice((Tie(one, other, before(one, other), why),)) for one in group for other in group if one != other
            )
        return None

    return ways_out
