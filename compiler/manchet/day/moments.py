"""The days and clock times of a plan, as moments on the clock of its kitchen."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from manchet.diagnostics.diagnostic import Diagnostic, Fix, Place
from manchet.diagnostics.fixes import instead
from manchet.diagnostics.reports import report
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax.clauses import Word
from manchet.syntax.plan_nodes import OnClock
from manchet.syntax.plan_tokens import WEEKDAYS
from manchet.timing.when import FIRST_YEAR, LAST_YEAR, When, not_on_the_clock

OVER_MIDNIGHT = timedelta(hours=12)
"""As long as hours that run over midnight may be before one of the two is taken for a slip. Our own rule."""
REACHES_BACK, REACHES_ON = 7, 1
"""Days before its own and after, that a plan may tell of."""

DAYS = tuple(word.capitalize() for word in WEEKDAYS)


class Between(NamedTuple):
    """From one moment to another; one moment alone has both alike."""

    start: datetime
    end: datetime


def weekday_of(word: Word) -> int:
    """Monday is 0."""
    return WEEKDAYS.index(word.text.lower())


def date_of(text: str) -> date | None:
    """The day of `2026-11-28`; None for one that no calendar has, or in which nobody bakes."""
    year, month, day = (int(part) for part in text.split("-"))
    try:
        return date(year, month, day) if FIRST_YEAR < year < LAST_YEAR else None
    except ValueError:
        return None


def no_such_date(text: str, place: Place) -> Diagnostic:
    year, month, day = (int(part) for part in text.split("-"))
    fixes: tuple[Fix, ...] = ()
    if 1 <= month <= 12 and 28 < day <= 31 and FIRST_YEAR < year < LAST_YEAR:
        last = date(year + month // 12, month % 12 + 1, 1) - timedelta(days=1)
        fixes = (instead(place, f"{last}"),)
    help = "" if fixes else "write the year, the month and the day, as in `2026-11-28`"
    return report("plan-no-such-date", place, f"there is no day {text}", help, fixes=fixes)


def clock_text(at: datetime) -> str:
    """`Sat 06:00`"""
    return f"{DAYS[at.weekday()]} {at:%H:%M}"


class MomentReading:
    """Turns what a plan's lines say into moments, and gathers what is wrong with them.

    A weekday is the nearest before the plan's own day, or that day. A time without a day is of the plan's day, or the next
    such time after the moment it follows.
    """

    def __init__(self, on: date, zone: str) -> None:
        self.on = on
        self.zone = zone
        self.reports: list[Diagnostic] = []

    def _moments(self, said: OnClock, line: Line, after: datetime | None = None) -> Between | None:
        """From and until when; None, with a report, where there is no such time."""
        first, _, last = said.clock.text.replace("–", "-").partition("-")
        place = line.place(said.clock.start, said.clock.end)
        day = self._day(said, line) if said.day is not None or after is None else after.date()
        if day is None:
            return None
        start = self._at(day, first, place, after if said.day is None else None)
        end = start if start is None or not last else self._at(start.date(), last, place, start)
        if start is None or end is None:
            return None
        fold = int(said.which is not None and said.which.text == "second")
        span = Between(start.replace(fold=fold), end.replace(fold=fold))
        told = said.which is not None
        whole = line.place(said.day.start if said.day else said.clock.start, (said.which or said.clock).end)
        odd = [fault for at in dict.fromkeys(span) for fault in self._off_the_clock(at, told, whole)]
        self.reports += odd
        return None if odd else span

    def _until(self, said: OnClock | None, line: Line, begins: Between) -> Between | None:
        """From the beginning of one time to the end of the other, that follows it."""
        if said is None:
            return begins
        ends = self._moments(said, line, begins.start)
        return None if ends is None else Between(begins.start, ends.end)

    def _day(self, said: OnClock, line: Line) -> date | None:
        if said.day is None:
            return self.on
        if said.day.text.lower() in WEEKDAYS:
            return self.on - timedelta(days=(self.on.weekday() - weekday_of(said.day)) % 7)
        place = line.place(said.day.start, said.day.end)
        day = date_of(said.day.text)
        if day is None:
            self.reports.append(no_such_date(said.day.text, place))
        elif not -REACHES_BACK <= (day - self.on).days <= REACHES_ON:
            message = f"{day} is too far from {self.on}, the day of this plan"
            help = "a plan reaches back seven days, and on to the next"
            self.reports.append(report("plan-day-too-far", place, message, help))
            return None
        return day

    def _at(self, day: date, clock: str, place: Place, after: datetime | None) -> datetime | None:
        hour, minute = map(int, clock.split(":"))
        if hour > 23 or minute > 59:
            fixes = (instead(place, "00:00"),) if (hour, minute) == (24, 0) else ()
            help = "midnight is `00:00` of the day that begins with it" if fixes else "the last is `23:59`"
            self.reports.append(report("no-such-hour", place, f"no clock shows {clock}", help, fixes=fixes))
            return None
        at = datetime(day.year, day.month, day.day, hour, minute)
        return at + timedelta(days=1) if after is not None and at <= after else at

    def _off_the_clock(self, at: datetime, told_which: bool, place: Place) -> Iterator[Diagnostic]:
        found = not_on_the_clock(When(at.replace(fold=0), is_ready=False, told_which=told_which), self.zone)
        if found is not None:
            yield report("hour-of-the-clock-change", place, *found)

    def _runs_backwards(self, span: Between, until: OnClock | None, place: Place) -> bool:
        """Whether hours whose end has no day of its own end before they begin, which is reported: read over midnight they would
        be more than half a day."""
        if span.end - span.start <= OVER_MIDNIGHT or (until is not None and until.day is not None):
            return False
        begins, ends = f"{span.start:%H:%M}", f"{span.end:%H:%M}"
        message = f"{begins} to {ends}: these hours end before they begin"
        help = f"write `{ends}-{begins}`, or for an end on the day after its date, `to {span.end:%Y-%m-%d %H:%M}`"
        self.reports.append(report("window-ends-first", place, message, help))
        return True

    def _ends_first(self, name: str, what: str, span: Between, place: Place) -> None:
        """The report of something that is over before it begins."""
        message = f"{what} ends {clock_text(span.end)}, {span.end:%Y-%m-%d}, before it begins {clock_text(span.start)}, {span.start:%Y-%m-%d}"
        later = span.end + timedelta(days=7)
        help = f"a weekday is the nearest before {self.on} or that day"
        if later.date() == self.on + timedelta(days=1):
            help += f"; for the night after it write the date, `{later:%Y-%m-%d %H:%M}`"
        self.reports.append(report(name, place, message, help))
