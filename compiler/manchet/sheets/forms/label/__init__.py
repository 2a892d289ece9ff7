"""The label of a food that is sold packed: its name, its list of ingredients, its nutrition, its weight and its date."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.label.view import Labels
from manchet.sheets.parts.label_paper import LABEL_LAYOUTS

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    from manchet.formula.sale import DIRECT, PREPACKED
    from manchet.label.how_sold import is_sold

    if not is_sold(work.formula, PREPACKED, DIRECT):
        return Outcome(None)
    from manchet.sheets.forms.label.label import labels

    return Outcome(labels(work, page.issue, page.house))


FORM = Form(
    name="label",
    place=30,
    about=Subject.FORMULA,
    view=Labels,
    template="forms/label/template.html",
    render=render,
    layouts=LABEL_LAYOUTS,
    preparations=OfPreparations.ALWAYS,
    dishes_too=True,
    is_label=True,
    none_made="no label was made: none of these says `sold prepacked`, or what its label must say is not known (`manchet check` says what)",
)
