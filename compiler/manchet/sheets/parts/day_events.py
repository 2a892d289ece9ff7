"""A planned day as a calendar: an event for each moment of a shift, and an alarm where nothing may move."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, time
from hashlib import sha256

from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.shift_moments import ShiftMoment, moments_of
from manchet.sheets.page.calendar import CalendarEvent, calendar_text
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_jobs import JobWords
from manchet.sheets.parts.day_views import WorkLine


def day_calendar(plan: DayPlan, house: House, person: str = "") -> bytes:
    """All moments of the plan, or those of the shifts of one person. Its stamp is the plan's own day."""
    stamp = datetime.combine(plan.said.date, time())
    return calendar_text(plan.said.name, stamp, day_events(plan, Measures(house, words_of(house.words)), person))


def day_events(plan: DayPlan, m: Measures, person: str = "") -> Iterator[CalendarEvent]:
    """Shift by shift, each by the clock."""
    words = JobWords(plan, works_of(plan), m)
    for number, shift in enumerate(plan.day.shifts):
        if person in ("", shift.name):
            for moment in moments_of(plan, number):
                yield _event(plan, number, moment, words)


def _event(plan: DayPlan, shift: int, moment: ShiftMoment, words: JobWords) -> CalendarEvent:
    wall, lines = WallTime(plan, words.m), words.lines(moment.jobs, moment.begins)
    is_break = plan.day.jobs[moment.jobs[0]].is_break
    sharp = moment.is_sharp and not is_break
    latest = words.m.words["day.sharp"]
    if not sharp:
        latest = f"{words.m.words['day.start_by']} {wall.moment(moment.begins + moment.slip)}"
    name = plan.day.shifts[shift].name
    breads = dict.fromkeys(line.bread for line in lines if line.bread)
    told = ", ".join(breads) or _line(lines[0])
    return CalendarEvent(
        uid=_uid(plan, shift, moment),
        begins=plan.of.clock.at(moment.begins),
        ends=plan.of.clock.at(moment.ends),
        summary=words.m.words.say("day.shift", name, told),
        description="\n".join((*(_line(line) for line in lines), latest)),
        category=name,
        alarm=sharp,
    )


def _uid(plan: DayPlan, shift: int, moment: ShiftMoment) -> str:
    """Of the plan's day, the shift and the moment's first job; not of its hour, so that one planned anew moves."""
    said = (plan.said.name, plan.said.date.isoformat(), plan.day.shifts[shift].key, plan.day.jobs[moment.jobs[0]].key)
    return f"{sha256(chr(0).join(said).encode()).hexdigest()[:32]}@manchet"


def _line(line: WorkLine) -> str:
    whose = " ".join(filter(None, (line.clock, line.bread, line.stage)))
    done = " · ".join(filter(None, (*(" ".join(filter(None, (one.do, one.how))) for one in line.clauses), line.then)))
    return f"{whose}: {done}" if whose else done
