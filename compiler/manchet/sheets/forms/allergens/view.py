"""What the allergen card says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running

Cell = Literal["yes", "may", "apart", "unknown", ""]


class AllergenRow(NamedTuple):
    """A food, and a place for each column. An empty place says only that it is in no ingredient."""

    name: str
    cells: tuple[Cell, ...]


class AllergenCard(NamedTuple):
    """Everything that is made, with the allergens that occur. Nothing on it says that a thing is not in a food."""

    title: str
    kitchen: str
    language: str
    paper: str
    running: Running
    columns: tuple[str, ...]
    """Only those that occur."""
    rows: tuple[AllergenRow, ...]
    reasons: tuple[str, ...]
    """Why something may be in a food or is kept apart from it, what is not known, what else is handled."""
    lists: tuple[str, ...]
    """The law whose list it is, and from when on."""
    landscape: bool = False
    form: Literal["allergens"] = "allergens"
