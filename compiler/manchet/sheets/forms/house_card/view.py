"""What the posted card of a house says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import CautionNote


class HouseCard(NamedTuple):
    """The hazards of a house, posted once: sheets only point to it."""

    title: str
    language: str
    paper: str
    running: Running
    cautions: tuple[CautionNote, ...]
    """Each under its catchword, warnings first."""
    sources: tuple[str, ...]
    """Each once, with where it is to be read."""
    defers: str
    form: Literal["house"] = "house"
