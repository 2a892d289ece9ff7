"""What one shift does, a moment a row: one clock at which somebody begins and does not stop until all of it is done."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.day.pages.day_plan import DayPlan
from manchet.day.pages.oven_settings import settings_of
from manchet.day.pages.slip import slip
from manchet.records import NamedTuple

FOLLOWS = 3
"""Minutes after which a job still belongs to the moment before it. Our own rule."""
LONGEST = 24
"""Minutes of a moment, at most, unless one job alone takes longer. Our own rule."""


class ShiftMoment(NamedTuple):
    """Jobs done in one go. Minutes of the day."""

    jobs: tuple[int, ...]
    begins: int
    ends: int
    slip: int
    """By how many minutes all of it may begin later with nothing else moved."""

    @property
    def is_sharp(self) -> bool:
        return self.slip == 0


def moments_of(plan: DayPlan, shift: int) -> tuple[ShiftMoment, ...]:
    """In the order they begin."""
    switched = [(one.job, one.by) for one in settings_of(plan) if one.by is not None]
    return tuple(
        ShiftMoment(
            tuple(jobs),
            plan.begins(jobs[0]),
            max(plan.ends(at) for at in jobs),
            min(
                [slip(plan.day, plan.timetable, jobs), *(by - plan.begins(job) for job, by in switched if job in jobs)]
            ),
        )
        for jobs in _joined(plan, plan.of_shift(shift))
    )


def _joined(plan: DayPlan, jobs: Sequence[int]) -> Iterator[list[int]]:
    row: list[int] = []
    for at in jobs:
        if row and not _goes_on(plan, row, at):
            yield row
            row = []
        row.append(at)
    if row:
        yield row


def _goes_on(plan: DayPlan, row: Sequence[int], job: int) -> bool:
    last = max(plan.ends(at) for at in row)
    alone = [plan.day.jobs[at].is_break for at in (*row, job)]
    return (
        not any(alone)
        and plan.begins(job) - last <= FOLLOWS
        and max(last, plan.ends(job)) - plan.begins(row[0]) <= LONGEST
    )
