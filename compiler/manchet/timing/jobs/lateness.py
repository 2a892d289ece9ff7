"""What becomes of the day if one job begins late and the baker does what the file allows."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.records import NamedTuple
from manchet.timing.jobs.durations import stands_longer
from manchet.timing.jobs.network import Job
from manchet.timing.jobs.schedule import ZERO, begins_bake, doughs_after, followers_of, waits


class TimeGiven(NamedTuple):
    """Job number `job` gives `seconds`."""

    job: int
    seconds: Fraction


class Lateness(NamedTuple):
    """In seconds. Waits after the late job are cut short to catch up; waits before it stand longer meanwhile."""

    shorter: tuple[TimeGiven, ...]
    longer: tuple[TimeGiven, ...]
    over: tuple[TimeGiven, ...]
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
    return lateness_in(jobs, starts)(late, by)


def lateness_in(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> Callable[[int, Fraction], Lateness]:
    """`lateness_of` for these jobs, of which what follows what is worked out once."""
    ends = [start + job.length.planned for start, job in zip(starts, jobs, strict=True)]
    after, goes_on = followers_of(jobs), doughs_after(jobs)

    def lateness(late: int, by: Fraction) -> Lateness:
        return _lateness(jobs, starts, ends, after, goes_on, late, by)

    return lateness


def _lateness(
    jobs: tuple[Job, ...],
    starts: tuple[Fraction, ...],
    ends: list[Fraction],
    after: tuple[tuple[int, ...], ...],
    goes_on: tuple[tuple[int, ...], ...],
    late: int,
    by: Fraction,
) -> Lateness:
    moved = _follow(jobs, starts, ends, late, by)
    began = {at: times[0] for at, times in moved.items()}
    ended = {at: times[1] for at, times in moved.items()}
    shorter, longer, over = [], [], []
    for at in sorted({*moved, *(need.job for late_one in moved for need in jobs[late_one].needs)}):
        job = jobs[at]
        begin, end = moved.get(at, (starts[at], ends[at]))
        stands = ZERO
        if goes_on[at]:
            gap = min(starts[j] for j in goes_on[at]) - ends[at]
            stands = max(min(began.get(j, starts[j]) for j in goes_on[at]) - end - gap, ZERO)
        cut = job.length.planned - (end - begin)
        restored = min(cut, stands)
        cut, stands = cut - restored, stands - restored
        if cut > 0:
            shorter.append(TimeGiven(at, cut))
        if stands > 0 and (waits(job) or job.step.may_wait is not None):
            allowed = stands_longer(job.step, job.length)
            within = stands if allowed is None else min(stands, allowed)
            if within > 0:
                longer.append(TimeGiven(at, within))
            if stands > within:
                over.append(TimeGiven(at, stands - within))
    planned_end = max(ends, default=ZERO)
    return Lateness(
        tuple(shorter),
        tuple(longer),
        tuple(over),
        bake=_first_bake_moves(jobs, starts, began, after, late),
        ready=max([planned_end, *ended.values()]) - planned_end,
    )


def _follow(
    jobs: tuple[Job, ...], starts: tuple[Fraction, ...], ends: list[Fraction], late: int, by: Fraction
) -> dict[int, tuple[Fraction, Fraction]]:
    """When the jobs that begin late begin and end; the others keep their times."""
    moved: dict[int, tuple[Fraction, Fraction]] = {}
    for at in range(late, len(jobs)):
        job = jobs[at]
        begin = starts[at] + by if at == late else starts[at]
        for need in job.needs:
            if need.job in moved:
                begin = max(begin, moved[need.job][1])
        if begin > starts[at]:
            moved[at] = begin, max(begin + job.length.low, ends[at])
    return moved


def _first_bake_moves(
    jobs: tuple[Job, ...],
    starts: tuple[Fraction, ...],
    began: dict[int, Fraction],
    after: tuple[tuple[int, ...], ...],
    late: int,
) -> Fraction:
    """How much later the earliest bake begins that is, or comes after, the late job."""
    reached, bakes = {late}, []
    for at in range(late, len(jobs)):
        if at not in reached:
            continue
        if any(begins_bake(jobs, need.job, at) for need in jobs[at].needs):
            bakes.append(at)
        reached.update(after[at])
    first = min(bakes, key=lambda at: starts[at], default=None)
    return ZERO if first is None else began.get(first, starts[first]) - starts[first]
