"""The cost sheet: what a batch costs, by ingredient and by stage, a piece and 100 g; what is not in it; what a price leaves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.cost_sheet.view import CostSheet
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    """None where nothing that is weighed for it has a price, or, with the reason, where prices do not add."""
    from manchet.costing.cost import cost_of
    from manchet.sheets.forms.cost_sheet.sheet import cost_sheet

    cost = cost_of(work)
    return Outcome(None if cost.value is None else cost_sheet(work, cost.value, page), cost.diagnostics)


FORM = Form(
    name="cost",
    place=20,
    about=Subject.FORMULA,
    view=CostSheet,
    template="forms/cost_sheet/template.html",
    render=render,
    layouts=(PageLayout("normal"), PageLayout("tight", 80)),
    preparations=OfPreparations.NAMED,
    dishes_too=True,
    none_made=(
        "no cost was worked out: nothing that is weighed has a price in the larder, in a line such as "
        "`price 21.40 EUR for 25 kg on 2026-09-14`"
    ),
)
