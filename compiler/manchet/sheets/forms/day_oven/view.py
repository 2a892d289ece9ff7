"""What the oven card of a planned day shows, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import CautionNote, Illustration


class OvenAct(NamedTuple):
    """What is done to the oven itself: lit, its fire out, switched on, set to another heat, switched off."""

    clock: str
    does: str
    who: str
    """Whose shift it is; "" where nobody does it, or there are no shifts."""
    floor: str
    """About, where it is read then; else ""."""


class OvenRow(NamedTuple):
    """A load that goes in."""

    number: str
    clock: str
    floor: str
    """About, to what a thermometer tells apart; without its unit."""
    bread: str
    pieces: str
    deck: str
    """`deck 2`, where the oven has several."""
    beside: str
    """The numbers of those that are in with it."""
    bounds: str
    """`not under 250 · by 22:40`"""
    then: tuple[str, ...]
    """Steam, damper and turns with their clocks, the look, the core."""
    colder: str
    """What to do if the floor is under its coldest."""
    out: str


class OvenLine(NamedTuple):
    """A line by the clock: one of the two."""

    day: str
    """`Friday 27 Nov`, where it is another than the line's before."""
    act: OvenAct | None
    load: OvenRow | None


class OvenOfDay(NamedTuple):
    """One oven."""

    oven: str
    head: str
    """When it is lit, how many loads."""
    rule: tuple[str, ...]
    lines: tuple[OvenLine, ...]
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
