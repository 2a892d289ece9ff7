"""What gives when a shift runs late: of each bread how late it may be, and which wait is then shorter."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.day.model import DayWait
from manchet.day.pages.day_plan import DayPlan
from manchet.records import NamedTuple

WORTH_SAYING = 10
"""Minutes: less than this is not worth a line. Our own rule."""


class RunningLate(NamedTuple):
    """From one clock to another a bread may be up to so many minutes late."""

    bread: str
    first: int
    last: int
    minutes: int
    """0: nothing gives, and what is loaded from here on is as much later."""
    shorter: str
    """The wait that is then shorter, in the words of the day: "retard"; "" where nothing gives."""
    may: int = 0
    """Of these minutes, how many go beyond the range of the wait before them: `may wait`."""
    before: str = ""
    """The wait that is then longer."""


def running_late(plan: DayPlan, shift: int) -> tuple[RunningLate, ...]:
    """The lines of each bread of the shift, in the order they begin: one for all jobs in a row whose lateness the same wait
    takes up, and one for a bread of which nothing gives."""
    jobs = [at for at in plan.of_shift(shift) if _leads_on(plan, at)]
    breads = list(dict.fromkeys(bread for at in jobs for bread in plan.day.jobs[at].breads))
    return tuple(
        line
        for bread in breads
        for line in _of_bread(plan, bread, [at for at in jobs if bread in plan.day.jobs[at].breads])
    )


def delays_the_fire(plan: DayPlan, shift: int) -> bool:
    """Whether lateness in this shift can reach an oven: it lights one, loads one, or something in it gives nothing."""
    jobs = set(plan.of_shift(shift))
    at_oven = {load.put for load in plan.day.loads} | {fire.light for fire in plan.day.fires}
    return bool(jobs & at_oven) or any(not one.minutes for one in running_late(plan, shift))


def _leads_on(plan: DayPlan, job: int) -> bool:
    """Something is measured from it: a fold inside a wait, or what comes out, holds nothing up."""
    return any(wait.before == job and (wait.what or wait.most is not None) for wait in plan.day.waits)


def _of_bread(plan: DayPlan, bread: str, jobs: Sequence[int]) -> list[RunningLate]:
    found: list[RunningLate] = []
    for at in jobs:
        gives = _gives(plan, bread, at)
        last = found[-1] if found else None
        if last is not None and last.shorter == gives.shorter and bool(last.may) == bool(gives.may):
            least = min(last, gives, key=lambda one: one.minutes)
            found[-1] = least._replace(first=last.first, last=gives.last)
        else:
            found.append(gives)
    giving = [one for one in found if one.minutes]
    return giving or found[:1]


def _gives(plan: DayPlan, bread: str, job: int) -> RunningLate:
    """Of one job: the first wait from here on that can be shorter by much takes up its lateness, as far as the wait before it
    can be longer."""
    start = plan.begins(job)
    nothing = RunningLate(bread, start, start, 0, "")
    before = _into(plan, job)
    taken = next((wait for wait in _ahead(plan, job) if _spare(plan, wait) >= WORTH_SAYING), None)
    if taken is None:
        return nothing
    room, may = _spare(plan, taken), 0
    if before is not None and before.most is not None:
        stands = start - plan.begins(before.before)
        within = max(before.most - stands, 0)
        room = min(room, max(before.most + before.may - stands, 0))
        may = max(room - within, 0)
    if room < WORTH_SAYING:
        return nothing
    return RunningLate(bread, start, start, room, taken.what, may, before.what if before is not None and may else "")


def _spare(plan: DayPlan, wait: DayWait) -> int:
    """Minutes by which a wait is longer than its least."""
    return plan.begins(wait.after) - plan.begins(wait.before) - wait.least


def _into(plan: DayPlan, job: int) -> DayWait | None:
    """The tightest wait that ends with a job."""
    into = [wait for wait in plan.day.waits if wait.after == job and wait.most is not None]
    return min(into, key=lambda wait: plan.begins(wait.before) + (wait.most or 0) + wait.may, default=None)


def _ahead(plan: DayPlan, job: int) -> Iterator[DayWait]:
    """The waits from a job on, along its dough, as they begin."""
    seen, standing = {job}, [job]
    while standing:
        at = min(standing, key=plan.begins)
        standing.remove(at)
        for wait in plan.day.waits:
            if wait.before == at and wait.after not in seen:
                if wait.what:
                    yield wait
                seen.add(wait.after)
                standing.append(wait.after)
