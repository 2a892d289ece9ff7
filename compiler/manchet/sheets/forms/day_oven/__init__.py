"""The oven card of a planned day: what goes in at which clock, beside what, and what to do if the floor is colder."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.day_oven.view import OvensPage
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.day.pages.day_plan import DayPlan
    from manchet.sheets.page.view import View


def render(plan: DayPlan, page: PageSetup) -> Outcome[View | None]:
    """None where nothing is baked."""
    from manchet.sheets.forms.day_oven.ovens_page import ovens_page

    view = ovens_page(plan, page.issue, page.house)
    return Outcome(view if view.ovens else None)


FORM = Form(
    name="loads",
    place=13,
    about=Subject.DAY,
    view=OvensPage,
    template="forms/day_oven/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 75)),
    preparations=OfPreparations.NEVER,
)
