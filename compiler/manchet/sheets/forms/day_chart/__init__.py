"""The day chart: all breads of a plan on one landscape page, what waits and why, and how sure the plan is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.day_chart.view import ChartPage

if TYPE_CHECKING:
    from manchet.day.pages.day_plan import DayPlan
    from manchet.sheets.page.view import View


def render(plan: DayPlan, page: PageSetup) -> Outcome[View | None]:
    from manchet.sheets.forms.day_chart.chart_page import chart_page

    return Outcome(chart_page(plan, page.issue, page.house))


FORM = Form(
    name="chart",
    place=10,
    about=Subject.DAY,
    view=ChartPage,
    template="forms/day_chart/template.html",
    render=render,
    landscape=True,
    preparations=OfPreparations.NEVER,
)
