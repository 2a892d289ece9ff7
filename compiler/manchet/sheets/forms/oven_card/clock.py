"""The hours of a falling oven as a baker reads them: on the day's clock where a start is known, else after the fire is out.

Of one bread the clock is that of its timing card. Where several share the oven nobody's doughs are timed to one another: a
start is the lighting of the oven, and what is to be ready has left it in time for what is done after.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta, tzinfo
from fractions import Fraction

from manchet.figures.oven.bakes import Bake
from manchet.figures.oven.loading_plan import LoadingPlan
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN
from manchet.timing.card.values import Card, CardRow
from manchet.timing.when import When, moment_of
from manchet.timing.zones import ClockChange, changes, later

HOUR = 3600
STEP = 5
"""Minutes: an estimate is no more exact."""
NO_TIME: Mapping[str, timedelta] = {}


class OvenClock(NamedTuple):
    """`fire_out` is when the hours begin to count; None where nobody says."""

    fire_out: datetime | None
    zone: tzinfo | None = None
    """Of a kitchen that says it."""
    planned: Mapping[Fraction, datetime] = {}
    """The clocks of a timing card for some of the hours: to the minute, as they stand there."""

    @property
    def changes(self) -> tuple[ClockChange, ...]:
        """Of the clock, in the day after the fire is out; a card is of no more."""
        if self.fire_out is None:
            return ()
        return tuple(changes(self.fire_out, later(self.fire_out, timedelta(days=1), self.zone), self.zone))

    def at(self, hours: Fraction) -> str:
        """`09:55`, or `+3:20`, to five minutes."""
        if hours in self.planned:
            return f"{self.planned[hours]:%H:%M}"
        minutes = int(round_to(hours * 60 / STEP, 0)) * STEP
        if self.fire_out is not None:
            return f"{later(self.fire_out, timedelta(minutes=minutes), self.zone):%H:%M}"
        return f"+{minutes // 60}:{minutes % 60:02}"


def clock_of_one(plan: LoadingPlan, card: Card, zone: tzinfo | None = None) -> OvenClock | None:
    """By the timing card of the one bread that is baked. None where its card has another number of fires or other loads in this
    oven, or one of them is not about as long after the fire as the plan has it: then the oven is counted by itself."""
    own = [row for row in card.rows if row.place == plan.oven.name]
    fires = [row.start for row in own if row.job == "fire out"]
    into = [row for row in own if _goes_in(row)]
    if len(fires) != 1 or [_load(row) for row in into] != [(one.bake.stage, one.number) for one in plan.loads]:
        return None
    planned: dict[Fraction, datetime] = {}
    for load, row in zip(plan.loads, into, strict=True):
        out = next((r.start for r in card.rows if r.job == "take out of oven" and _whose(r) == _whose(row)), None)
        planned |= {load.into.hours: row.start} | ({} if out is None else {load.out.hours: out})
    clock = OvenClock(fires[0], zone, planned)
    return clock if all(_is_near(hours, at - fires[0]) for hours, at in planned.items()) else None


def _goes_in(row: CardRow) -> bool:
    return row.job == "step" and row.step is not None and row.step.verb in IN_OVEN and not row.baked_before


def _load(row: CardRow) -> tuple[str, int]:
    return row.stage, row.load or 1


def _whose(row: CardRow) -> tuple[str, str, int, int]:
    return row.stage, row.branch, row.mix, row.load


def _is_near(hours: Fraction, after: timedelta) -> bool:
    """No further off than an estimate may be: to its step, and a tenth of the time. Our own rule."""
    off = abs(hours * 60 - Fraction(int(after.total_seconds()), 60))
    return off <= STEP + hours * 60 / 10


def clock_of(
    plan: LoadingPlan, when: When | None, zone: tzinfo | None = None, after: Mapping[str, timedelta] = NO_TIME
) -> OvenClock:
    """A start is the lighting of the oven; what is to be ready is the last of it, `after` how long each bread stands when it
    is out, by its name."""
    if when is None or when.assumed:
        return OvenClock(None)
    lights = timedelta(seconds=int(plan.oven.heats_in or 0))
    if not when.is_ready:
        return OvenClock(later(moment_of(when, zone), lights, zone), zone)
    bakes = max((_minutes(load.out.hours) + _stands(load.bake, after) for load in plan.loads), default=timedelta())
    days = 0
    while when.not_before is not None and _bare(moment_of(when, zone, days), bakes + lights, zone) < when.not_before:
        days += 1
    return OvenClock(later(moment_of(when, zone, days), -bakes, zone), zone)


def _minutes(hours: Fraction) -> timedelta:
    return timedelta(minutes=int(round_to(hours * 60 / STEP, 0)) * STEP)


def _stands(bake: Bake, after: Mapping[str, timedelta]) -> timedelta:
    return timedelta() if bake.stage else after.get(bake.formula, timedelta())


def _bare(ready: datetime, before: timedelta, zone: tzinfo | None) -> datetime:
    """What the clock shows so long before."""
    return later(ready, -before, zone).replace(tzinfo=None)
