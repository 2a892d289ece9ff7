"""Divide and pack: into how many pieces each dough of a planned day goes, and who gets what."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.day_packing.view import PackingPage
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.day.pages.day_plan import DayPlan
    from manchet.sheets.page.view import View


def render(plan: DayPlan, page: PageSetup) -> Outcome[View | None]:
    """None where nothing is divided and nothing is packed."""
    from manchet.sheets.forms.day_packing.packing_page import packing_page

    view = packing_page(plan, page.issue, page.house)
    return Outcome(view if view.divide or view.pack else None)


FORM = Form(
    name="packing",
    place=15,
    about=Subject.DAY,
    view=PackingPage,
    template="forms/day_packing/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 80)),
    preparations=OfPreparations.NEVER,
)
