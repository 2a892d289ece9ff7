"""The prep sheet: one formula at one size, in the order of the work."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.prep_sheet.view import PrepSheet

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    from manchet.batch.weighing import weighings
    from manchet.sheets.forms.prep_sheet.sheet import prep_sheet

    weighed = weighings(work, page.house.system)
    return Outcome(prep_sheet(work, page.issue, page.house, page.before, page.pictures), weighed.diagnostics)


FORM = Form(
    name="sheet",
    place=1,
    about=Subject.FORMULA,
    view=PrepSheet,
    template="forms/prep_sheet/template.html",
    render=render,
    illustrated=True,
    preparations=OfPreparations.NEVER,
    compares=True,
)
