"""A page a shift: what one pair of hands does, a moment a row, and what gives when it runs late."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.day_shift.view import ShiftPages
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.day.pages.day_plan import DayPlan
    from manchet.sheets.page.view import View


def render(plan: DayPlan, page: PageSetup) -> Outcome[View | None]:
    """None where all that is to be done is done the evening before."""
    from manchet.sheets.forms.day_shift.pages import shift_pages

    view = shift_pages(plan, page.issue, page.house)
    return Outcome(view if view.shifts else None)


FORM = Form(
    name="shift",
    place=12,
    about=Subject.DAY,
    view=ShiftPages,
    template="forms/day_shift/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 88), PageLayout("tight bare", 65)),
    preparations=OfPreparations.NEVER,
)
