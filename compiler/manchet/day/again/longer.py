"""What helps where the rest of a day has no plan: somebody stays longer than the plan says, by the least that is enough."""

from __future__ import annotations

from manchet.day.again.fixing import Again
from manchet.day.again.planning import plan_again
from manchet.day.again.repair import Plans
from manchet.day.clashes.asking import least
from manchet.day.clashes.eased import with_longer_shift
from manchet.day.clashes.remedies import STEP
from manchet.day.model import Day
from manchet.records import NamedTuple

MOST = 120
"""Minutes: nobody who has worked a shift is asked for more than these. Our own figures."""


class LongerShift(NamedTuple):
    """`ends` is the minute it would end at."""

    shift: int
    ends: int


def longer_shifts(again: Again, anew: Plans) -> tuple[LongerShift, ...]:
    """Each shift that is not over and that by itself, so much longer, makes a plan possible; those that must stay least first."""
    now = min(
        (job.earliest for at, job in enumerate(again.day.jobs) if at not in again.begun), default=again.day.finishes
    )

    def is_enough(shift: int, steps: int) -> bool:
        longer = again._replace(
            day=_with_longer(again.day, shift, steps * STEP), own=_with_longer(again.own, shift, steps * STEP)
        )
        return plan_again(longer, anew).planned is not None

    found = []
    for shift, its in enumerate(again.day.shifts):
        if its.ends > now and is_enough(shift, MOST // STEP):
            steps = least(1, MOST // STEP, lambda steps, shift=shift: is_enough(shift, steps))  # type: ignore[misc]
            found.append(LongerShift(shift, its.ends + steps * STEP))
    return tuple(sorted(found, key=lambda one: (one.ends - again.day.shifts[one.shift].ends, one.shift)))


def _with_longer(day: Day, shift: int, minutes: int) -> Day:
    its = day.shifts[shift]
    return with_longer_shift(day, shift, its.begins, its.ends + minutes)
