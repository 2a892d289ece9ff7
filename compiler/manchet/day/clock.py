"""Minutes of a day and the clock on the wall: a day counts the time that passes, and only here is it turned into hours."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from fractions import Fraction

from manchet.records import NamedTuple
from manchet.timing.zones import later, on_the_wall


class DayClock(NamedTuple):
    """`zero` is minute 0, a moment of `zone`; None where no clock changes."""

    zero: datetime
    zone: tzinfo | None

    def at(self, minute: int) -> datetime:
        """What the clock shows then."""
        return later(self.zero, timedelta(minutes=minute), self.zone)

    def minute(self, said: datetime) -> int:
        """The minute at which the clock shows what a file says, rounded down."""
        return int((on_the_wall(said, self.zone, bool(said.fold)) - self.zero) // timedelta(minutes=1))

    def between(self, start: datetime | None, end: datetime) -> int:
        """Minutes from one moment to another; 0 where there is no other."""
        return 0 if start is None else self.minute(end) - self.minute(start)


def clock_from(said: datetime, zone: tzinfo | None) -> DayClock:
    """A clock whose minute 0 is the full hour at or before that moment."""
    return DayClock(on_the_wall(said.replace(minute=0, second=0, microsecond=0), zone), zone)


def minutes_up(seconds: Fraction | int) -> int:
    """Whole minutes, rounded up."""
    return -int(-seconds // 60)


def minutes_down(seconds: Fraction | int) -> int:
    """Whole minutes, rounded down."""
    return int(seconds // 60)


def hours_and_minutes(minutes: int) -> str:
    """As a baker says it, whoever says it: `40 min`, `110 min`, `2 h`, `2 h 5 min`."""
    hours, rest = divmod(minutes, 60) if minutes >= 120 else (0, minutes)
    return " ".join(
        part for part in (f"{hours} h" if hours else "", f"{rest} min" if rest or not hours else "") if part
    )
