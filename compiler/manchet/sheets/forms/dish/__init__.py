"""The dish sheet: what is made ahead, and one plate from the bottom up."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, PageSetup, Subject
from manchet.sheets.forms.dish.view import DishSheet
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    if not work.formula.dish:
        return Outcome(None)
    from manchet.sheets.forms.dish.dish import dish_sheet

    return Outcome(dish_sheet(work, page))


FORM = Form(
    name="dish",
    place=8,
    about=Subject.FORMULA,
    view=DishSheet,
    template="forms/dish/template.html",
    render=render,
    layouts=(PageLayout("normal"), PageLayout("tight", 85)),
    illustrated=True,
    of_dishes=True,
    none_made="no dish was made: none of what was asked for is a dish; one begins with `assembly NAME`",
)
