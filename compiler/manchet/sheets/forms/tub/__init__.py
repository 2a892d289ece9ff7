"""The label of a tub in which a preparation is kept: made, by whom, how cold, until when."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, PageSetup, Subject
from manchet.sheets.forms.tub.view import TubLabels
from manchet.sheets.parts.label_paper import LABEL_LAYOUTS

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    """None of what nobody keeps, and of what a date must not be put on: see `tub_label_withheld`."""
    from manchet.cautions.under_fat import tub_label_withheld
    from manchet.sheets.forms.tub.tub import tub_labels

    if not work.formula.preparation or not work.formula.kept or tub_label_withheld(work):
        return Outcome(None)
    return Outcome(tub_labels(work, page.issue, page.house))


FORM = Form(
    name="tub",
    place=32,
    about=Subject.FORMULA,
    view=TubLabels,
    template="forms/tub/template.html",
    render=render,
    on_demand=True,
    layouts=LABEL_LAYOUTS,
    is_label=True,
    none_made=(
        "no tub label was made: none of these is a preparation that says how long it is good for, or it is of plants under fat that are"
        " to be kept longer or warmer than their limit"
    ),
)
