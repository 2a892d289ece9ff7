"""The clock of a bakehouse whose zone is known: on two nights of the year it jumps, and hours pass all the same.

A moment carries the offset from UTC that is in force then, as a fixed one, so that what lies between two moments is the
time that passes and each shows what the clock on the wall shows. Where no zone is said, moments have no offset, and no
clock changes. The rules are those of the IANA tz database, as the machine has them.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta, timezone, tzinfo
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones

from manchet.records import NamedTuple

HOUR, MINUTE = timedelta(hours=1), timedelta(minutes=1)


class ClockChange(NamedTuple):
    """The clock jumps; in a zone's own rules always at a full minute."""

    before: datetime
    """What it would have shown at that moment."""
    after: datetime
    """What it shows instead."""

    @property
    def minutes(self) -> int:
        """By how many it jumps: more than 0 in spring."""
        return int((self.after.replace(tzinfo=None) - self.before.replace(tzinfo=None)).total_seconds()) // 60


def zone_of(name: str) -> tzinfo | None:
    """The zone of that name; None where it has none, or the machine knows no such zone."""
    try:
        return ZoneInfo(name) if name else None
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return None


def zones_known() -> frozenset[str]:
    """All that the machine knows; none where it has no zone data."""
    return frozenset(available_timezones())


def on_the_wall(at: datetime, zone: tzinfo | None, second: bool = False) -> datetime:
    """The moment at which the clock shows `at`; of two the first, or the `second`. What it never shows is as much later."""
    if zone is None:
        return at
    return _fixed(at.replace(tzinfo=zone, fold=second), zone)


def later(at: datetime, by: timedelta, zone: tzinfo | None) -> datetime:
    """The moment when so much time has passed; before, where `by` is negative."""
    return at + by if zone is None else _fixed(at + by, zone)


def _fixed(at: datetime, zone: tzinfo) -> datetime:
    here = at.astimezone(UTC).astimezone(zone)
    return here.replace(tzinfo=timezone(here.utcoffset() or timedelta(0)), fold=0)


def never_shown(at: datetime, zone: tzinfo) -> ClockChange | None:
    """The change in which the clock leaves out what `at` says; None where it shows that."""
    shown = on_the_wall(at, zone)
    if shown.replace(tzinfo=None) == at:
        return None
    return next(changes(shown - timedelta(days=1), shown, zone), None)


def shown_twice(at: datetime, zone: tzinfo) -> ClockChange | None:
    """The change after which the clock shows again what `at` says; None where it shows that once."""
    first, second = on_the_wall(at, zone), on_the_wall(at, zone, second=True)
    if first == second or never_shown(at, zone) is not None:
        return None
    return next(changes(first, second, zone), None)


def changes(start: datetime, end: datetime, zone: tzinfo | None) -> Iterator[ClockChange]:
    """The changes of the clock after `start` up to `end`, moments of the zone."""
    if zone is None:
        return
    here = later(start, timedelta(0), zone)
    while here < end:
        there = min(later(here, HOUR, zone), end)
        if there.utcoffset() != here.utcoffset():
            while there - here > MINUTE:
                middle = later(here, (there - here) // MINUTE // 2 * MINUTE, zone)
                here, there = (middle, there) if middle.utcoffset() == here.utcoffset() else (here, middle)
            yield ClockChange(there.astimezone(here.tzinfo), there)
        here = there
