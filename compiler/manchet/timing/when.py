"""What the baker types after `--start` and `--ready`, as a moment of the bakehouse's own clock."""

from __future__ import annotations

import re
from datetime import date, datetime, time, timedelta, tzinfo

from manchet.records import NamedTuple
from manchet.timing.zones import never_shown, on_the_wall, shown_twice, zone_of

FIRST_YEAR, LAST_YEAR = 1900, 2999
"""Nobody bakes beyond, and a card needs days before and after."""
DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")

CLOCK = re.compile(r"(?P<hour>\d{1,2})(?:[:.h](?P<minute>\d{2}))?(?::00)?\s*(?P<half>am|pm)?")
ISO_DAY = re.compile(r"(?P<day>\d{4}-\d{1,2}-\d{1,2})(?:[t\s]+(?P<rest>.*))?")
WORD_DAY = re.compile(r"(?P<day>[a-z]+)\.?,?(?:\s+(?P<rest>.*))?")


class When(NamedTuple):
    """The moment the work begins, or the moment the bread is to be ready.

    `not_before` is set where no day was said: the card moves on by whole days until its first job is not before it.
    """

    at: datetime
    is_ready: bool
    not_before: datetime | None = None
    second: bool = False
    """Of a time that the clock shows twice that night, the second."""
    told_which: bool = False
    """The baker said whether the first or the second."""
    assumed: bool = False
    """Nobody said when: the clock times are an example to be read off."""


def moment_of(when: When, zone: tzinfo | None, days: int = 0) -> datetime:
    """The moment meant, or the same time of the clock so many days later."""
    return on_the_wall(when.at + timedelta(days=days), zone, when.second)


def start_at(text: str, now: datetime) -> When | str:
    """Read `--start`. `now` is the bakehouse's clock, handed in. A message for the baker if it cannot be read."""
    return _when(text, now, is_ready=False)


def ready_at(text: str, now: datetime) -> When | str:
    """Read `--ready`, in the same ways."""
    return _when(text, now, is_ready=True)


def _when(text: str, now: datetime, is_ready: bool) -> When | str:
    bare, which = _which(text)
    found = moment(bare, now)
    if isinstance(found, str):
        return found
    at, day_said = found
    return When(at, is_ready, None if day_said else now, which == "second", bool(which))


def _which(text: str) -> tuple[str, str]:
    """The text without a `first` or `second` at its end, and that."""
    before, _, last = text.strip().rpartition(" ")
    return (before, last.casefold()) if before and last.casefold() in ("first", "second") else (text, "")


def not_on_the_clock(when: When, zone: str) -> tuple[str, str] | None:
    """What to tell the baker, and what to write, where the clock of the zone does not show the moment, or shows it twice
    and nobody said which."""
    rules = zone_of(zone)
    if rules is None or when.assumed:
        return None
    day = f"{DAYS[when.at.weekday()].capitalize()} {when.at:%Y-%m-%d}"
    left_out = never_shown(when.at, rules)
    if left_out is not None:
        before, after = f"{left_out.before:%H:%M}", f"{left_out.after:%H:%M}"
        message = f"there is no {when.at:%H:%M} on {day} in {zone}: the clock goes from {before} straight to {after}"
        return message, f"write a time before {before}, or from {after} on"
    again = shown_twice(when.at, rules)
    if again is not None and not when.told_which:
        before, after = f"{again.before:%H:%M}", f"{again.after:%H:%M}"
        message = f"{when.at:%H:%M} comes twice on {day} in {zone}: at {before} the clock goes back to {after}"
        return message, f"say which: `{when.at:%Y-%m-%d %H:%M} first` or `… second`"
    return None


def moment(text: str, now: datetime) -> tuple[datetime, bool] | str:
    """The moment a text means, and whether it says the day; or a message.

    `Sat 05:00` is the next Saturday whose 05:00 is still to come; `05:00` alone the next time the clock shows it;
    `2026-11-28T05:00`, `2026-11-28 05:00`, `today 05:00` and `tomorrow 5:30 am` that day.
    """
    said = " ".join(text.casefold().split())
    if iso := ISO_DAY.fullmatch(said):
        day = _date(iso["day"])
        if day is None:
            return f"there is no day {iso['day']}; write the day like 2026-11-28"
        return _at(day, iso["rest"], text, now)
    word = WORD_DAY.fullmatch(said)
    if word and word["day"] not in ("am", "pm"):
        if word["day"] in ("today", "tomorrow"):
            return _at(now.date() + timedelta(days=word["day"] == "tomorrow"), word["rest"], text, now)
        weekday = _weekday(word["day"])
        if weekday is None:
            return f"`{text}` names no day; write a day of the week and a time, as in `Sat 05:00`, or a date"
        found = _at(now.date() + timedelta(days=(weekday - now.weekday()) % 7), word["rest"], text, now)
        if isinstance(found, str) or found[0] >= now:
            return found
        return found[0] + timedelta(days=7), True
    clock = _clock(said)
    if clock is None:
        return _unread(text)
    at = datetime.combine(now.date(), clock)
    return (at if at >= now else at + timedelta(days=1)), False


def _at(day: date, rest: str | None, text: str, now: datetime) -> tuple[datetime, bool] | str:
    if not rest:
        return f"`{text}` says the day and no time; write both, as in `{text.strip()} 05:00`"
    clock = _clock(rest)
    return _unread(text) if clock is None else (datetime.combine(day, clock), True)


def _unread(text: str) -> str:
    return f"`{text}` is not a time of day; write `05:00`, `Sat 05:00` or `2026-11-28 05:00`"


def _date(text: str) -> date | None:
    year, month, day = (int(part) for part in text.split("-"))
    if not FIRST_YEAR <= year <= LAST_YEAR:
        return None
    try:
        return date(year, month, day)
    except ValueError:
        return None


def _weekday(word: str) -> int | None:
    """Monday is 0. Three letters are enough."""
    found = [at for at, day in enumerate(DAYS) if len(word) >= 3 and day.startswith(word)]
    return found[0] if found else None


def _clock(text: str) -> time | None:
    read = CLOCK.fullmatch(text.strip())
    if read is None or (read["minute"] is None and read["half"] is None):
        return None
    hour, minute = int(read["hour"]), int(read["minute"] or 0)
    if read["half"]:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if read["half"] == "pm" else 0)
    if hour == 24 and minute == 0:
        return None
    return time(hour, minute) if hour < 24 and minute < 60 else None
