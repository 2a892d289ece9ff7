"""A night on which the clocks change: hours pass as they do, and every clock shows what the wall shows.

Against the IANA tz database (iana.org/time-zones) as zoneinfo has it, and against transitions that are known from it: in
the European Union at 01:00 UTC on the last Sundays of March and October (Directive 2000/84/EC), in New York at 02:00 on the
second Sunday of March and the first of November (Energy Policy Act of 2005, section 110), on Lord Howe Island by half an hour.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, strategies as st

from manchet.timing.zones import changes, later, never_shown, on_the_wall, shown_twice, zone_of, zones_known

LISBON, NEW_YORK, LORD_HOWE = (ZoneInfo(n) for n in ("Europe/Lisbon", "America/New_York", "Australia/Lord_Howe"))


def bare(at: datetime) -> datetime:
    return at.replace(tzinfo=None)


@pytest.mark.parametrize(
    ("zone", "day", "before", "after"),
    [
        (LISBON, "2026-03-29", "01:00", "02:00"),
        (LISBON, "2026-10-25", "02:00", "01:00"),
        (NEW_YORK, "2026-03-08", "02:00", "03:00"),
        (NEW_YORK, "2026-11-01", "02:00", "01:00"),
        (LORD_HOWE, "2026-04-05", "02:00", "01:30"),
        (LORD_HOWE, "2026-10-04", "02:00", "02:30"),
    ],
)
def test_the_known_changes(zone: ZoneInfo, day: str, before: str, after: str) -> None:
    noon = datetime.fromisoformat(day + " 12:00")
    (change,) = changes(on_the_wall(noon - timedelta(days=1), zone), on_the_wall(noon, zone), zone)
    assert (f"{change.before:%F %H:%M}", f"{change.after:%F %H:%M}") == (f"{day} {before}", f"{day} {after}")
    assert (change.minutes > 0) == (after > before) and change.before == change.after


def test_a_year_in_lisbon_has_two_and_one_without_a_zone_none() -> None:
    start, end = datetime(2026, 1, 1), datetime(2027, 1, 1)
    assert len(list(changes(on_the_wall(start, LISBON), on_the_wall(end, LISBON), LISBON))) == 2
    assert list(changes(start, end, None)) == []


def test_what_the_clock_never_shows_and_what_it_shows_twice() -> None:
    hole, twice = datetime(2026, 3, 29, 1, 30), datetime(2026, 10, 25, 1, 30)
    left_out = never_shown(hole, LISBON)
    assert left_out is not None and (left_out.before.hour, left_out.after.hour) == (1, 2)
    again = shown_twice(twice, LISBON)
    assert again is not None and (again.before.hour, again.after.hour) == (2, 1)
    assert never_shown(twice, LISBON) is None and shown_twice(hole, LISBON) is None
    for plain in (
        datetime(2026, 3, 29, 0, 59),
        datetime(2026, 3, 29, 2, 0),
        datetime(2026, 10, 25, 0, 59),
        datetime(2026, 10, 25, 2, 0),
    ):
        assert never_shown(plain, LISBON) is None and shown_twice(plain, LISBON) is None
    assert on_the_wall(twice, LISBON, second=True) - on_the_wall(twice, LISBON) == timedelta(hours=1)


@given(
    st.datetimes(datetime(2020, 1, 1), datetime(2030, 1, 1)),
    st.integers(-5000, 5000),
    st.sampled_from([LISBON, NEW_YORK, LORD_HOWE]),
)
def test_as_zoneinfo_has_it(at: datetime, minutes: int, zone: ZoneInfo) -> None:
    """Time passes as in UTC, and the wall shows what zoneinfo shows."""
    at = at.replace(second=0, microsecond=0)
    here = on_the_wall(at, zone)
    there = later(here, timedelta(minutes=minutes), zone)
    assert there - here == timedelta(minutes=minutes)
    assert bare(there) == bare((here.astimezone(UTC) + timedelta(minutes=minutes)).astimezone(zone))
    assert bare(here) == at or never_shown(at, zone) is not None


def test_a_zone_that_nobody_knows() -> None:
    assert zone_of("") is None and zone_of("Europe/Lisbn") is None and zone_of("../etc/passwd") is None
    assert "Europe/Lisbon" in zones_known()
