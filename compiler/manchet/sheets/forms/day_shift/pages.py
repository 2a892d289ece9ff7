"""The pages of the shifts: from jobs and minutes to text."""

from __future__ import annotations

from manchet.day.pages.day_plan import DayPlan
from manchet.day.pages.late import delays_the_fire
from manchet.day.pages.leaving import is_evening
from manchet.sheets.forms.day_shift.view import ShiftPage, ShiftPages
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.clock_lines import clock_lines
from manchet.sheets.parts.day_clock import WallTime, changes_within
from manchet.sheets.parts.day_leaving import before_you_go
from manchet.sheets.parts.day_rows import has_estimates, late_breads, no_delay, work_days


def shift_pages(plan: DayPlan, issue: Issue, house: House) -> ShiftPages:
    """A page for each shift that has anything to do. An evening's work stands on the page of that evening."""
    words = words_of(house.words)
    m = Measures(house, words)
    shifts = sorted(range(len(plan.day.shifts)), key=lambda at: plan.day.shifts[at].begins)
    mine = [at for at in shifts if plan.of_shift(at) and not is_evening(plan, at)]
    return ShiftPages(
        title=plan.said.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(plan.said.name, "", issue),
        shifts=tuple(_page(plan, at, m) for at in mine),
        clock_changes=clock_lines(changes_within(plan, plan.day.begins, plan.day.finishes), m),
    )


def _page(plan: DayPlan, shift: int, m: Measures) -> ShiftPage:
    wall, said = WallTime(plan, m), plan.day.shifts[shift]
    days = work_days(plan, shift, m)
    return ShiftPage(
        title=m.words.say("day.shift", wall.weekday(said.begins), said.name),
        hours=m.words.say("day.hours", wall.clock(said.begins), wall.clock(said.ends)),
        days=days,
        late=late_breads(plan, shift, m),
        fire="" if delays_the_fire(plan, shift) else no_delay(plan, m),
        before_you_go=before_you_go(plan, shift, m),
        estimates=m.words["day.estimates"] if has_estimates(days, m) else "",
    )
