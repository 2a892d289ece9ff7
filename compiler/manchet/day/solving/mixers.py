"""Mixers: each has one dough at a time, is washed where the next one wants it so, and is sometimes away."""

from __future__ import annotations

from itertools import combinations

from ortools.sat.python.cp_model_helper import Literal

from manchet.day.model import DayMixer
from manchet.day.solving.alike import Shared, share_out
from manchet.day.solving.frame import Frame


def add_mixers(frame: Frame) -> None:
    for mixer in frame.day.mixers:
        jobs = [number for number, job in enumerate(frame.day.jobs) if job.mixer == mixer.name]
        if jobs:
            _add_mixer(frame, mixer, jobs)


def _add_mixer(frame: Frame, mixer: DayMixer, jobs: list[int]) -> None:
    away = [frame.fixed(begins, ends) for begins, ends in mixer.away]
    gaps = {(one, other): minutes for one, other, minutes in mixer.gaps if minutes > 0}
    if mixer.number > 1 and not gaps:
        intervals = [frame.interval(job) for job in jobs] + away
        frame.model.add_cumulative(intervals, [1] * len(jobs) + [mixer.number] * len(away), mixer.number)
        return
    shared = share_out(frame, len(jobs), mixer.number)
    for machine in range(mixer.number):
        mine = [frame.interval(job, shared[at][machine]) for at, job in enumerate(jobs) if machine in shared[at]]
        frame.model.add_no_overlap([*mine, *away])
    for one, other in combinations(range(len(jobs)), 2):
        _add_washing(frame, gaps, jobs, shared, one, other)


def _add_washing(
    frame: Frame, gaps: dict[tuple[int, int], int], jobs: list[int], shared: Shared, one: int, other: int
) -> None:
    first, second = jobs[one], jobs[other]
    if not gaps.get((first, second)) and not gaps.get((second, first)):
        return
    before = frame.follows(first, second, frame.length(first) + gaps.get((first, second), 0))
    after = frame.follows(second, first, frame.length(second) + gaps.get((second, first), 0))
    for machine in shared[one].keys() & shared[other].keys():
        elsewhere: list[Literal] = [~shared[one][machine], ~shared[other][machine]]
        frame.model.add_bool_or([before, after, *elsewhere])
