"""Events as an iCalendar file (RFC 5545): the only place that knows icalendar."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, datetime, timedelta

from manchet.records import NamedTuple

PRODUCT = "-//Manchet//plan//EN"


class CalendarEvent(NamedTuple):
    """`begins` and `ends` are moments with an offset, or of no zone at all: then the calendar shows them as they are said."""

    uid: str
    """Stays the same while the event is the same, whenever it is."""
    begins: datetime
    ends: datetime
    summary: str
    description: str
    category: str
    alarm: bool
    """It sounds as the event begins."""


def calendar_text(name: str, stamp: datetime, events: Iterable[CalendarEvent]) -> bytes:
    """The file, the same bytes for the same events. `stamp` is what every event says of when it was written: no clock is asked.

    A moment with an offset is written in UTC (RFC 5545, 3.3.5, form 2), which no change of a clock makes ambiguous.
    """
    from icalendar import Alarm, Calendar, Event

    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    calendar.add("x-wr-calname", name)
    for one in events:
        event = Event()
        event.add("uid", one.uid)
        event.add("dtstamp", stamp.replace(tzinfo=UTC))
        event.add("dtstart", _moment(one.begins))
        event.add("dtend", _moment(one.ends))
        event.add("summary", one.summary)
        event.add("description", one.description)
        event.add("categories", [one.category])
        if one.alarm:
            alarm = Alarm()
            alarm.add("action", "DISPLAY")
            alarm.add("description", one.summary)
            alarm.add("trigger", timedelta(0))
            event.add_component(alarm)
        calendar.add_component(event)
    return bytes(calendar.to_ical())


def _moment(at: datetime) -> datetime:
    return at if at.tzinfo is None else at.astimezone(UTC)
