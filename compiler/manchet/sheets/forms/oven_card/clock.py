"""The hours of a falling oven as a baker reads them: on the day's clock where a start is known, else after the fire is out."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from fractions import Fraction

from manchet.figures.oven.loading_plan import Plan
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.timing.when import When, moment_of
from manchet.timing.zones import ClockChange, changes, later

HOUR = 3600
STEP = 5
"""Minutes: an estimate is no more exact."""


class OvenClock(NamedTuple):
    """`fire_out` is when the hours begin to count; None where nobody says."""

    fire_out: datetime | None
    zone: tzinfo | None = None
    """Of a kitchen that says it."""

    @property
    def changes(self) -> tuple[ClockChange, ...]:
        """Of the clock, in the day after the fire is out; a card is of no more."""
        if self.fire_out is None:
            return ()
        return tuple(changes(self.fire_out, later(self.fire_out, timedelta(days=1), self.zone), self.zone))

    def at(self, hours: Fraction) -> str:
        """`09:55`, or `+3:20`, to five minutes."""
        minutes = int(round_to(hours * 60 / STEP, 0)) * STEP
        if self.fire_out is not None:
            return f"{later(self.fire_out, timedelta(minutes=minutes), self.zone):%H:%M}"
        return f"+{minutes // 60}:{minutes % 60:02}"


def clock_of(plan: Plan, when: When | None, zone: tzinfo | None = None) -> OvenClock:
    """A start is the lighting of the oven; what is to be ready is the last load, out of it."""
    if when is None or when.assumed:
        return OvenClock(None)
    lights = timedelta(seconds=int(plan.oven.heats_in or 0))
    if not when.is_ready:
        return OvenClock(later(moment_of(when, zone), lights, zone), zone)
    out = max((load.out.hours for load in plan.loads), default=Fraction(0))
    bakes = timedelta(minutes=int(round_to(out * 60 / STEP, 0)) * STEP)
    days = 0
    while when.not_before is not None and _bare(moment_of(when, zone, days), bakes + lights, zone) < when.not_before:
        days += 1
    return OvenClock(later(moment_of(when, zone, days), -bakes, zone), zone)


def _bare(ready: datetime, before: timedelta, zone: tzinfo | None) -> datetime:
    """What the clock shows so long before."""
    return later(ready, -before, zone).replace(tzinfo=None)
