"""The ticket on the shelf of a food that is sold unpacked: its name, its price, and what it contains."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, PageSetup, Subject
from manchet.sheets.forms.shelf.view import ShelfTickets
from manchet.sheets.parts.label_paper import LABEL_LAYOUTS

if TYPE_CHECKING:
    from manchet.batch.work import Work
    from manchet.sheets.page.view import View


def render(work: Work, page: PageSetup) -> Outcome[View | None]:
    from manchet.formula.sale import LOOSE
    from manchet.label.how_sold import is_sold

    if not is_sold(work.formula, LOOSE):
        return Outcome(None)
    from manchet.sheets.forms.shelf.shelf import shelf_tickets

    return Outcome(shelf_tickets(work, page.issue, page.house))


FORM = Form(
    name="shelf",
    place=31,
    about=Subject.FORMULA,
    view=ShelfTickets,
    template="forms/shelf/template.html",
    render=render,
    layouts=LABEL_LAYOUTS,
    dishes_too=True,
    is_label=True,
    none_made="no shelf ticket was made: none of these says `sold loose`",
)
