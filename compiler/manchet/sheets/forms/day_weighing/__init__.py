"""The weigh-up: all bowls of a planned day in the order they are needed, with the very weights of the prep sheets."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.day_weighing.view import WeighUp
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.day.pages.day_plan import DayPlan
    from manchet.sheets.page.view import View


def render(plan: DayPlan, page: PageSetup) -> Outcome[View | None]:
    """None where everything that would be weighed is there already."""
    from manchet.sheets.forms.day_weighing.weigh_up import weigh_up

    view = weigh_up(plan, page.issue, page.house)
    return Outcome(view if view.sittings else None)


FORM = Form(
    name="weighup",
    place=14,
    about=Subject.DAY,
    view=WeighUp,
    template="forms/day_weighing/template.html",
    render=render,
    layouts=(NORMAL, PageLayout("tight", 82), PageLayout("tight parted", 72)),
    preparations=OfPreparations.NEVER,
)
