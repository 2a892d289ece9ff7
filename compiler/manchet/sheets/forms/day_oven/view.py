"""What the oven card of a planned day shows, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import CautionNote, Illustration


class FireRow(NamedTuple):
    """When it is lit, and when its fire is out: a clock, what is done, and the floor then."""

    clock: str
    does: str
    floor: str


class OvenRow(NamedTuple):
    """A load that goes in."""

    number: str
    clock: str
    floor: str
    """About, to what a thermometer tells apart; without its unit."""
    bread: str
    pieces: str
    beside: str
    """The numbers of those that are in with it."""
    bounds: str
    """`not under 250 · by 22:40`"""
    then: tuple[str, ...]
    """Steam, damper and turns with their clocks, the look, the core."""
    colder: str
    """What to do if the floor is under its coldest."""
    out: str


class OvenOfDay(NamedTuple):
    """One oven."""

    oven: str
    head: str
    """When it is lit, how many loads."""
    rule: tuple[str, ...]
    fires: tuple[FireRow, ...]
    rows: tuple[OvenRow, ...]
    curve: Illustration | None
    """How the floor falls; None for an oven that holds its heat."""
    hotter: str
    """What to do if the floor is hotter; "" for an oven that is set."""


class OvensPage(NamedTuple):
    """What goes into the ovens of a plan."""

    title: str
    language: str
    paper: str
    running: Running
    degree: str
    ovens: tuple[OvenOfDay, ...]
    cautions: tuple[CautionNote, ...]
    clock_changes: tuple[str, ...] = ()
    form: Literal["loads"] = "loads"
