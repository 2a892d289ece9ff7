"""What the safety card of a house says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Box


class SafetyRow(NamedTuple):
    """A hazard of the house: what it is called, what to do, the limit, and what to do when it has gone wrong."""

    number: str
    level: Literal["top", "warning", "note", "limit"]
    catchword: str
    words: str
    limit: str
    if_missed: str
    boxes: tuple[Box, ...] = ()
    """What is written down of it, each shift."""
    address: str = ""
    """Who says so, and where that is to be read."""

    @property
    def is_grave(self) -> bool:
        return self.level in ("top", "warning")


class SafetyCard(NamedTuple):
    """The hazards of a house, posted once: sheets only point to it."""

    title: str
    kitchen: str
    language: str
    paper: str
    running: Running
    rows: tuple[SafetyRow, ...]
    """Warnings first."""
    emergency: tuple[str, ...]
    """What is filled in by pen: where to call, and where everything is."""
    sources: tuple[str, ...]
    """Each once."""
    defers: str
    form: Literal["house"] = "house"
