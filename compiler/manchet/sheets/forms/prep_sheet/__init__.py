"""The prep sheet: one formula at one size, in the order of the work."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.prep_sheet.view import PrepSheet
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    from manchet.batch.weighing import weighings
    from manchet.sheets.forms.prep_sheet.sheet import prep_sheet

    weighed = weighings(work, page.house.system)
    return Outcome(
        prep_sheet(work, page.issue, page.house, page.before, page.pictures, page.ahead), weighed.diagnostics
    )


LAYOUTS = (
    PageLayout("turned", sides=2),
    PageLayout("run"),
    PageLayout("tight turned", 85, sides=2),
    PageLayout("tight", 85),
    PageLayout("apart", over=2),
)
"""Turned where the dough leaves the bowl; where that takes a side more, run on; where it saves one, tight. Where all of it is
more than a leaf, what is made before the dough is a leaf of its own."""

FORM = Form(
    name="sheet",
    place=1,
    about=Subject.FORMULA,
    view=PrepSheet,
    template="forms/prep_sheet/template.html",
    render=render,
    layouts=LAYOUTS,
    illustrated=True,
    preparations=OfPreparations.NEVER,
    compares=True,
)
