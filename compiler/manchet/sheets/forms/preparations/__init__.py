"""The preparations of a run: what is to be made ahead and for which breads, then each, several to a page."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Bakehouse, Form, PageSetup, Subject
from manchet.sheets.forms.preparations.view import Preparations
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.sheets.page.view import View


def render(bakehouse: Bakehouse, page: PageSetup) -> Outcome[View | None]:
    if not bakehouse.ahead:
        return Outcome(None)
    from manchet.batch.weighing import weighings
    from manchet.sheets.forms.preparations.preparations import preparations

    reports = [report for each in bakehouse.ahead for report in weighings(each.work, page.house.system).diagnostics]
    return Outcome(preparations(bakehouse.ahead, page.issue, page.house, page.pictures), tuple(reports))


FORM = Form(
    name="preparations",
    place=7,
    about=Subject.BAKEHOUSE,
    view=Preparations,
    template="forms/preparations/template.html",
    render=render,
    illustrated=True,
    layouts=(PageLayout("normal"), PageLayout("tight", 90)),
)
