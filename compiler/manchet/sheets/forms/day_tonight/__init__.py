"""Tonight: what is done the evening before, and what is seen to, laid and counted before anybody goes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.day_tonight.view import TonightPage
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.day.pages.day_plan import DayPlan
    from manchet.sheets.page.view import View


def render(plan: DayPlan, page: PageSetup) -> Outcome[View | None]:
    from manchet.sheets.forms.day_tonight.tonight_page import tonight_page

    return Outcome(tonight_page(plan, page.issue, page.house))


FORM = Form(
    name="tonight",
    place=11,
    about=Subject.DAY,
    view=TonightPage,
    template="forms/day_tonight/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 85)),
    preparations=OfPreparations.NEVER,
)
