"""The clock of a planned day: minutes as the wall shows them."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.pages.day_plan import DayPlan
from manchet.records import NamedTuple
from manchet.sheets.page.measures import Measures
from manchet.timing.zones import ClockChange, changes


class WallTime(NamedTuple):
    """Minutes of one day as text."""

    plan: DayPlan
    m: Measures

    def clock(self, minute: int) -> str:
        """`22:47`"""
        return self.m.clock(self.plan.of.clock.at(minute))

    def moment(self, minute: int) -> str:
        """`Fri 22:47`"""
        at = self.plan.of.clock.at(minute)
        return f"{self.m.words.several('days.short')[at.weekday()]} {self.m.clock(at)}"

    def day(self, minute: int) -> str:
        """`Friday 27 Nov`"""
        return self.m.day(self.plan.of.clock.at(minute))

    def weekday(self, minute: int) -> str:
        """`Friday`"""
        return self.m.words.several("days.names")[self.plan.of.clock.at(minute).weekday()]

    def span(self, first: int, last: int) -> str:
        """`22:47 – 23:10`, or one clock where both are alike."""
        one, other = self.clock(first), self.clock(last)
        return one if one == other else self.m.words.say("day.span", one, other)

    def moments(self, first: int, last: int) -> str:
        """`Fri 12:00 – 14:00`, or one moment where both are alike."""
        return self.moment(first).replace(self.clock(first), self.span(first, last))

    def minutes(self, minutes: int) -> str:
        """`35 min`, `2 h 5 min`"""
        return self.m.duration(Fraction(minutes * 60))


def changes_within(plan: DayPlan, first: int, last: int) -> tuple[ClockChange, ...]:
    """The changes of the clock between two minutes of the day."""
    clock = plan.of.clock
    return tuple(changes(clock.at(first), clock.at(last), clock.zone))


def minute_of(plan: DayPlan, change: ClockChange) -> int:
    """When the clock changes."""
    return int((change.after - plan.of.clock.zero).total_seconds()) // 60
