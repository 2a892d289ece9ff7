"""The calendar of a planned day, read back by another parser (vobject) than the library that writes it."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest
import vobject
from day.market import market, number_of, with_starts
from sheets.each_form import METRIC

from manchet.day.clock import clock_from
from manchet.day.pages.day_plan import DayPlan
from manchet.day.pages.shift_moments import moments_of
from manchet.sheets.parts.day_events import day_calendar


def events(plan: DayPlan, person: str = "") -> list[Any]:
    return list(vobject.readOne(day_calendar(plan, METRIC, person).decode()).vevent_list)


def in_zone(plan: DayPlan, zone: str, zero: datetime) -> DayPlan:
    """The same minutes from another beginning, in a zone."""
    return plan._replace(of=plan.of._replace(clock=clock_from(zero, ZoneInfo(zone))))


def test_an_event_for_each_moment_of_a_shift() -> None:
    plan = market()
    moments = [one for shift in range(len(plan.day.shifts)) for one in moments_of(plan, shift)]
    found = events(plan)
    begins = [plan.of.clock.at(one.begins) for one in moments]
    assert [one.dtstart.value for one in found] == begins
    assert len({one.uid.value for one in found}) == len(moments)
    assert {one.categories.value[0] for one in found} == {"Tom", "Ines"}


def test_it_sounds_only_where_nothing_may_move() -> None:
    plan = market()
    moments = [one for shift in range(len(plan.day.shifts)) for one in moments_of(plan, shift)]
    alarms = [hasattr(one, "valarm") for one in events(plan)]
    assert alarms == [one.is_sharp for one in moments] and True in alarms and False in alarms
    loud = next(one for one in events(plan) if hasattr(one, "valarm"))
    assert loud.valarm.trigger.value.total_seconds() == 0 and loud.valarm.action.value == "DISPLAY"


def test_what_is_planned_at_another_hour_is_the_same_event() -> None:
    before = {one.uid.value: one.dtstart.value for one in events(market())}
    start = market().begins(number_of(market(), "Mudlark/fold/2"))
    after = {one.uid.value: one.dtstart.value for one in events(with_starts(market(), {"Mudlark/fold/2": start + 3}))}
    assert before.keys() == after.keys()
    (moved,) = [uid for uid in before if before[uid] != after[uid]]
    assert (after[moved] - before[moved]).total_seconds() == 180


def test_a_plan_of_another_day_has_other_events() -> None:
    other = market()._replace(said=market().said._replace(date=market().said.date.replace(day=21)))
    assert not {one.uid.value for one in events(market())} & {one.uid.value for one in events(other)}


@pytest.mark.parametrize(
    ("zone", "zero", "hours"),
    [("Europe/London", datetime(2026, 10, 23, 17), (0, 1)), ("Europe/London", datetime(2027, 3, 26, 17), (0, 1))],
    ids=["clocks go back", "clocks go forward"],
)
def test_the_minutes_between_events_are_those_of_the_plan_over_a_change_of_the_clock(
    zone: str, zero: datetime, hours: tuple[int, int]
) -> None:
    """The clock of London changes on 25 October 2026 and on 28 March 2027, at 01:00 UTC: inside this plan, moved by a day."""
    plan = in_zone(market(), zone, zero.replace(day=zero.day + 1))
    found = sorted(one.dtstart.value for one in events(plan))
    moments = sorted(one.begins for shift in range(len(plan.day.shifts)) for one in moments_of(plan, shift))
    passed = [int((at - found[0]).total_seconds()) // 60 for at in found]
    assert passed == [minute - moments[0] for minute in moments]
    offsets = {at.astimezone(ZoneInfo(zone)).utcoffset() for at in found}
    assert len(offsets) == 2 and all(at.utcoffset() == UTC.utcoffset(at) for at in found)


def test_a_person_gets_their_own_shifts() -> None:
    ines = events(market(), "Ines")
    assert 0 < len(ines) < len(events(market())) and {one.categories.value[0] for one in ines} == {"Ines"}


def test_it_says_what_is_done_and_by_when() -> None:
    one = next(
        one
        for one in events(market(), "Tom")
        if "Ebb rye, Causeway" in one.summary.value and "all 14" in one.description.value
    )
    assert one.summary.value == "Tom: Ebb rye, Causeway"
    lines = one.description.value.split("\n")
    assert lines[0].startswith("Ebb rye: all 14 loaves in") and lines[-1] == "sharp"
    assert any(one.description.value.endswith("start by Fri 08:54") for one in events(market(), "Ines"))


def test_the_same_plan_is_the_same_bytes() -> None:
    assert day_calendar(market(), METRIC) == day_calendar(market(), METRIC)
    assert b"DTSTAMP:20261128T000000Z" in day_calendar(market(), METRIC)
