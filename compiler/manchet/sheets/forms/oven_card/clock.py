"""The hours of a falling oven as a baker reads them: on the day's clock where a start is known, else after the fire is out."""

from __future__ import annotations

from datetime import datetime, timedelta
from fractions import Fraction

from manchet.figures.oven.loading_plan import Plan
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.timing.when import When

HOUR = 3600
STEP = 5
"""Minutes: an estimate is no more exact."""


class OvenClock(NamedTuple):
    """`fire_out` is when the hours begin to count; None where nobody says."""

    fire_out: datetime | None

    def at(self, hours: Fraction) -> str:
        """`09:55`, or `+3:20`, to five minutes."""
        minutes = int(round_to(hours * 60 / STEP, 0)) * STEP
        if self.fire_out is not None:
            return f"{self.fire_out + timedelta(minutes=minutes):%H:%M}"
        return f"+{minutes // 60}:{minutes % 60:02}"


def clock_of(plan: Plan, when: When | None) -> OvenClock:
    """A start is the lighting of the oven; what is to be ready is the last load, out of it."""
    if when is None or when.assumed:
        return OvenClock(None)
    lights = timedelta(seconds=int(plan.oven.heats_in or 0))
    if not when.is_ready:
        return OvenClock(when.at + lights)
    out = max((load.out.hours for load in plan.loads), default=Fraction(0))
    fire_out = when.at - timedelta(minutes=int(round_to(out * 60 / STEP, 0)) * STEP)
    while when.not_before is not None and fire_out - lights < when.not_before:
        fire_out += timedelta(days=1)
    return OvenClock(fire_out)
