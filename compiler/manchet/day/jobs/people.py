"""Who is there when, and the day's own clock, which begins before everything that a plan says."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta

from manchet.day.clock import DayClock, clock_from, minutes_up
from manchet.day.model import DayJob, Shift
from manchet.day.said import Plan
from manchet.timing.zones import zone_of

WITHOUT_SHIFTS = 48 * 60
"""Minutes before the last end in which a plan that names no shift takes somebody to be there. Our own rule."""


def clock_of(plan: Plan) -> DayClock:
    """Minute 0 is a full hour before the first shift, appointment or fire that the plan says."""
    said = [
        *(shift.start for shift in plan.shifts),
        *(one.at for one in plan.appointments),
        *(one.lit[0] for one in plan.fires if one.lit is not None),
    ]
    ends = [want.end.by for want in plan.wants]
    earliest = min([*said, *ends], default=datetime.combine(plan.date, datetime.min.time()))
    if not plan.shifts:
        earliest -= timedelta(minutes=WITHOUT_SHIFTS)
    return clock_from(earliest, zone_of(plan.kitchen.zone))


def shifts_of(plan: Plan, clock: DayClock) -> Iterator[Shift]:
    """Each with a key of its own; where the plan names none, the kitchen's hands for `WITHOUT_SHIFTS`."""
    number: dict[str, int] = {}
    for said in plan.shifts:
        name = said.name or f"hands {said.hands}"
        number[name] = number.get(name, 0) + 1
        yield Shift(f"{name}/{number[name]}", name, said.hands, clock.minute(said.start), clock.minute(said.end))
    if not plan.shifts:
        last = max((clock.minute(want.end.by) for want in plan.wants), default=WITHOUT_SHIFTS)
        hands = plan.kitchen.hands or 1
        yield Shift(f"hands {hands}/1", f"hands {hands}", hands, last - WITHOUT_SHIFTS, last)


def breaks_of(plan: Plan, shifts: Sequence[Shift]) -> Iterator[DayJob]:
    """A break is a job of its shift that belongs to no bread."""
    for shift, said in zip(shifts, plan.shifts, strict=False):
        if said.rest:
            minutes = minutes_up(said.rest)
            yield DayJob(
                key=f"{shift.key}/break",
                breads=(),
                does="break",
                minutes=minutes,
                earliest=shift.begins,
                latest=shift.ends - minutes,
                shift=shift.key,
                is_break=True,
            )
