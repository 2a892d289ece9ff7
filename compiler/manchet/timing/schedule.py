"""When each job begins: the dough goes straight through, every other stage is timed to be ready for its use.

All times are seconds from the first job of all, exact. Nothing here knows a clock.
"""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.timing.network import Job

ZERO = Fraction(0)

HEAT = frozenset({"bake", "roast", "griddle", "fry"})
"""Verbs that need a hot oven (or griddle) that stands ready and waits for nobody."""


class Latest(NamedTuple):
    """Until when a job may begin if every wait after it is cut to its shortest, and what moves next if it is later.

    `moves` is "oven", "ready", "mixer", or the key of the stage that is waiting.
    """

    at: Fraction
    moves: str


def starts_of(jobs: tuple[Job, ...]) -> tuple[Fraction, ...]:
    """The planned beginning of every job, the earliest at 0.

    Forward from the beginning of the dough for the dough and its branches, which never stand between two steps (a
    second mix waits only for the mixer); backward from their use for all other stages, so that they are ready just
    then. Lengths are the planned ones.
    """
    starts: list[Fraction] = [ZERO] * len(jobs)
    for at, job in enumerate(jobs):
        if job.is_dough:
            before = [n.job for n in job.needs if jobs[n.job].is_dough]
            starts[at] = max((starts[j] + jobs[j].length.planned for j in before), default=ZERO)
    wanted_by = followers_of(jobs)
    for at in range(len(jobs) - 1, -1, -1):
        if not jobs[at].is_dough:
            use = min((starts[j] for j in wanted_by[at]), default=ZERO)
            starts[at] = use - jobs[at].length.planned
    first = min(starts, default=ZERO)
    return tuple(start - first for start in starts)


def followers_of(jobs: tuple[Job, ...]) -> tuple[tuple[int, ...], ...]:
    """For every job those that need it."""
    found: list[list[int]] = [[] for _ in jobs]
    for at, job in enumerate(jobs):
        for need in job.needs:
            found[need.job].append(at)
    return tuple(tuple(one) for one in found)


def critical_jobs(jobs: tuple[Job, ...]) -> frozenset[int]:
    """The jobs of the longest way through the work, by planned lengths: those that have no float at all."""
    earliest: list[Fraction] = []
    for job in jobs:
        earliest.append(max((earliest[n.job] + jobs[n.job].length.planned for n in job.needs), default=ZERO))
    end = max((e + job.length.planned for e, job in zip(earliest, jobs, strict=True)), default=ZERO)
    latest = [end] * len(jobs)
    after = followers_of(jobs)
    for at in range(len(jobs) - 1, -1, -1):
        latest[at] = min((latest[j] for j in after[at]), default=end) - jobs[at].length.planned
    return frozenset(at for at in range(len(jobs)) if earliest[at] == latest[at])


def latest_of(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> tuple[Latest, ...]:
    """How long each job may be put off before something else moves.

    What must not move: the first bake of a dough, the use of a stage in another, the mixer's next mix, the time the
    bread is ready. Up to there waits may shrink to their shortest.
    """
    after = followers_of(jobs)
    found: list[Latest] = [Latest(ZERO, "")] * len(jobs)
    for at in range(len(jobs) - 1, -1, -1):
        job = jobs[at]
        limits = [_limit(jobs, starts, found, at, j) for j in after[at]]
        if not limits:
            limits = [Latest(starts[at] + job.length.planned, "ready")]
        limit = min(limits)
        found[at] = Latest(max(limit.at - job.length.low, starts[at]), limit.moves)
    return tuple(found)


def _limit(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], found: list[Latest], at: int, then: int) -> Latest:
    """By when job `at` must be done for the sake of `then`, which needs it."""
    how = next(n.how for n in jobs[then].needs if n.job == at)
    if how == "stage":
        return Latest(starts[then], jobs[then].stage.key)
    if how == "mixer":
        return Latest(starts[then], "mixer")
    if begins_bake(jobs, at, then):
        return Latest(starts[then], "oven")
    return found[then]


def begins_bake(jobs: tuple[Job, ...], before: int, at: int) -> bool:
    """Job `at` is the first phase of a bake: it needs the oven and the job before it does not."""
    return jobs[at].step.verb in HEAT and jobs[before].step.verb not in HEAT


def stands_until(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], at: int) -> Fraction | None:
    """Until when what waits for this job may stand: the longest of its wait, and what it `may wait` after it."""
    ends = [_may_stand(jobs, starts, need.job) for need in jobs[at].needs if need.how != "mixer"]
    return min((end for end in ends if end is not None), default=None)


def _may_stand(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], at: int) -> Fraction | None:
    job = jobs[at]
    wait = job.step.may_wait
    more = ZERO if wait is None else wait.seconds.high or wait.seconds.low or ZERO
    if waits(job):
        return None if job.length.high is None else starts[at] + job.length.high + more
    if wait is not None:
        return starts[at] + job.length.planned + more
    return None if job.length.planned else stands_until(jobs, starts, at)


def waits(job: Job) -> bool:
    """A step that is over when its time is, and not when somebody is done."""
    return job.step.work.value == "waiting"
