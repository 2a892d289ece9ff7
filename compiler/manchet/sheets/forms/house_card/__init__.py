"""The safety card of a house: its hazards, once for the wall."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, PageSetup, Subject
from manchet.sheets.forms.house_card.view import SafetyCard
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.kitchen.model import Kitchen
    from manchet.sheets.page.view import View


def render(kitchen: Kitchen, page: PageSetup) -> Outcome[View | None]:
    from manchet.sheets.forms.house_card.card import safety_card

    return Outcome(safety_card(kitchen, page.issue, page.house, page.has_lye))


FORM = Form(
    name="house",
    place=3,
    about=Subject.KITCHEN,
    view=SafetyCard,
    template="forms/house_card/template.html",
    render=render,
    layouts=(PageLayout("normal"), PageLayout("tight", 80)),
)
