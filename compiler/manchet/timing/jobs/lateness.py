"""What becomes of the day if one job begins late and the baker does what the file allows."""

from __future__ import annotations

from fractions import Fraction
from heapq import heappop, heappush

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


class LateDay:
    """Lets one job begin late and follows the work from there: of what does not move nothing is asked again.

    Every job begins at its time or as soon as what it needs is done. One that begins late is cut down to its shortest
    if that helps it to end on time. What is done on time and then waits for a late job stretches within its range,
    then within what it `may wait`; the rest is over.
    """

    def __init__(self, jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> None:
        self.jobs, self.starts = jobs, starts
        self.ends = [start + job.length.planned for start, job in zip(starts, jobs, strict=True)]
        self.end = max(self.ends, default=ZERO)
        self.after, self.goes_on = followers_of(jobs), doughs_after(jobs)
        self.next = [min((starts[then] for then in after), default=ZERO) for after in self.goes_on]
        """When the first job begins that goes on with what a job made."""
        self.shortest, self.first_bake = _to_the_end(jobs, starts, self.after)

    def ready(self, late: int, by: Fraction) -> Fraction:
        """Seconds that the last bread is later."""
        return max(self.starts[late] + by + self.shortest[late] - self.end, ZERO)

    def lateness(self, late: int, by: Fraction) -> Lateness:
        """What becomes of it if job `late` begins `by` seconds after its time."""
        jobs, starts = self.jobs, self.starts
        moved = self._follow(late, by)
        shorter, longer, over = [], [], []
        for at in sorted({*moved, *(need.job for late_one in moved for need in jobs[late_one].needs)}):
            job = jobs[at]
            begin, end = moved.get(at, (starts[at], self.ends[at]))
            stands = ZERO
            if self.goes_on[at]:
                gap = self.next[at] - self.ends[at]
                stands = max(self._goes_on(at, moved) - end - gap, ZERO)
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
        first = self.first_bake[late]
        bake = ZERO if first is None or first not in moved else moved[first][0] - starts[first]
        return Lateness(tuple(shorter), tuple(longer), tuple(over), bake, self.ready(late, by))

    def _goes_on(self, at: int, moved: dict[int, tuple[Fraction, Fraction]]) -> Fraction:
        """When the first job begins now that goes on with what job `at` made."""
        return min(moved[then][0] if then in moved else self.starts[then] for then in self.goes_on[at])

    def _follow(self, late: int, by: Fraction) -> dict[int, tuple[Fraction, Fraction]]:
        """When the jobs that begin late begin and end; the others keep their times."""
        moved: dict[int, tuple[Fraction, Fraction]] = {}
        begins = {late: self.starts[late] + by}
        waiting = [late]
        while waiting:
            at = heappop(waiting)
            begin = begins[at]
            end = max(begin + self.jobs[at].length.low, self.ends[at])
            moved[at] = begin, end
            for then in self.after[at]:
                if end > begins.get(then, self.starts[then]):
                    if then not in begins:
                        heappush(waiting, then)
                    begins[then] = end
        return moved


def _to_the_end(
    jobs: tuple[Job, ...], starts: tuple[Fraction, ...], after: tuple[tuple[int, ...], ...]
) -> tuple[list[Fraction], list[int | None]]:
    """For every job the seconds from its beginning to the end of all that needs it, each cut to its shortest; and the
    earliest bake that it is, or that comes after it."""
    shortest: list[Fraction] = [ZERO] * len(jobs)
    first_bake: list[int | None] = [None] * len(jobs)
    for at in range(len(jobs) - 1, -1, -1):
        shortest[at] = jobs[at].length.low + max((shortest[then] for then in after[at]), default=ZERO)
        bakes = [bake for then in after[at] if (bake := first_bake[then]) is not None]
        if any(begins_bake(jobs, need.job, at) for need in jobs[at].needs):
            bakes.append(at)
        first_bake[at] = min(bakes, key=lambda one: (starts[one], one), default=None)
    return shortest, first_bake
