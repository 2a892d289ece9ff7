"""What the ticket of an unpacked food says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.label_paper import LabelPaper
from manchet.sheets.parts.views import AllergenLine


class ShelfTicket(NamedTuple):
    """Whatever the file does not say is empty."""

    name: str
    called: str
    price: str
    about: str
    """What one weighs and what a kilogram costs."""
    allergens: AllergenLine
    copies: int = 1


class ShelfTickets(NamedTuple):
    """The tickets of one formula: one for each thing that is sold unpacked."""

    title: str
    language: str
    paper: str
    running: Running
    stock: LabelPaper
    labels: tuple[ShelfTicket, ...]
    form: Literal["shelf"] = "shelf"
