"""What becomes of the day if one job begins late and the baker does what the file allows."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.timing.network import Job
from manchet.timing.schedule import ZERO, begins_bake, followers_of, waits


class Given(NamedTuple):
    """Job number `job` gives `seconds`."""

    job: int
    seconds: Fraction


class Lateness(NamedTuple):
    """In seconds. Waits after the late job are cut short to catch up; waits before it stand longer meanwhile."""

    shorter: tuple[Given, ...]
    longer: tuple[Given, ...]
    over: tuple[Given, ...]
    """Longer than their range and what they may wait."""
    bake: Fraction
    """How much the first bake that depends on it moves."""
    ready: Fraction
    """How much later the last bread is ready."""


def lateness_of(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], late: int, by: Fraction) -> Lateness:
    """Let job `late` begin `by` seconds after its time, and follow the work from there.

    Every job begins at its time or as soon as what it needs is done. One that begins late is cut down to its shortest
    if that helps it to end on time. What is done on time and then waits for a late job stretches within its range,
    then within what it `may wait`; the rest is over.
    """
    began, ended = _follow(jobs, starts, late, by)
    after = followers_of(jobs)
    shorter, longer, over = [], [], []
    for at, job in enumerate(jobs):
        cut = job.length.planned - (ended[at] - began[at])
        stands = _stands(starts, began, ended, after[at], at, job)
        restored = min(cut, stands)
        cut, stands = cut - restored, stands - restored
        if cut > 0:
            shorter.append(Given(at, cut))
        if stands > 0 and (waits(job) or job.step.may_wait is not None):
            allowed = _allowed(job)
            within = stands if allowed is None else min(stands, allowed)
            if within > 0:
                longer.append(Given(at, within))
            if stands > within:
                over.append(Given(at, stands - within))
    return Lateness(
        tuple(shorter),
        tuple(longer),
        tuple(over),
        bake=_first_bake_moves(jobs, starts, began, after, late),
        ready=max(ended, default=ZERO) - max(_planned_ends(jobs, starts), default=ZERO),
    )


def _planned_ends(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> list[Fraction]:
    return [start + job.length.planned for start, job in zip(starts, jobs, strict=True)]


def _follow(
    jobs: tuple[Job, ...], starts: tuple[Fraction, ...], late: int, by: Fraction
) -> tuple[list[Fraction], list[Fraction]]:
    began: list[Fraction] = []
    ended: list[Fraction] = []
    for at, job in enumerate(jobs):
        planned = starts[at] + (by if at == late else ZERO)
        begin = max([planned, *(ended[need.job] for need in job.needs)])
        began.append(begin)
        ended.append(max(begin + job.length.low, starts[at] + job.length.planned))
    return began, ended


def _stands(
    starts: tuple[Fraction, ...],
    began: list[Fraction],
    ended: list[Fraction],
    followers: tuple[int, ...],
    at: int,
    job: Job,
) -> Fraction:
    """How much longer than planned it is until somebody takes up what this job made."""
    if not followers:
        return ZERO
    planned = min(starts[j] for j in followers) - (starts[at] + job.length.planned)
    now = min(began[j] for j in followers) - ended[at]
    return max(now - planned, ZERO)


def _allowed(job: Job) -> Fraction | None:
    """How much longer than planned the file lets it stand; None for ever."""
    if waits(job) and job.length.high is None:
        return None
    stretch = (job.length.high or ZERO) - job.length.planned if waits(job) else ZERO
    wait = job.step.may_wait
    return stretch + (ZERO if wait is None else wait.seconds.high or wait.seconds.low or ZERO)


def _first_bake_moves(
    jobs: tuple[Job, ...],
    starts: tuple[Fraction, ...],
    began: list[Fraction],
    after: tuple[tuple[int, ...], ...],
    late: int,
) -> Fraction:
    reached, waiting, bakes = {late}, [late], []
    while waiting:
        at = waiting.pop()
        for then in after[at]:
            if begins_bake(jobs, at, then):
                bakes.append(then)
            if then not in reached:
                reached.add(then)
                waiting.append(then)
    first = min(bakes, key=lambda j: starts[j], default=None)
    return ZERO if first is None else began[first] - starts[first]
