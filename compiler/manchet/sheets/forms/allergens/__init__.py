"""The allergen card: everything that is made here, and what is in it, once for the counter."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.allergens.view import AllergenCard
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.sheets.form import Bakehouse
    from manchet.sheets.page.view import View


def render(bakehouse: Bakehouse, page: PageSetup) -> Outcome[View | None]:
    from manchet.sheets.forms.allergens.card import allergen_card

    return Outcome(allergen_card(bakehouse, page.issue, page.house))


def is_sold(bakehouse: Bakehouse) -> bool:
    """Whether a file says how something is sold: else a house may have no counter."""
    return any(work.formula.sale is not None for work in bakehouse.works)


FORM = Form(
    name="allergens",
    place=16,
    about=Subject.BAKEHOUSE,
    view=AllergenCard,
    template="forms/allergens/template.html",
    render=render,
    layouts=(PageLayout("normal"), PageLayout("tight", 70)),
    preparations=OfPreparations.NEVER,
    unasked=is_sold,
    none_made="no allergen card was made: nothing that was asked for is a bread or is sold",
)
