"""What the pages of the shifts show, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.day_views import LateBread, WorkDay


class ShiftPage(NamedTuple):
    """A shift on its page."""

    title: str
    """`Friday: Ines`"""
    hours: str
    """From when to when somebody is there."""
    days: tuple[WorkDay, ...]
    late: tuple[LateBread, ...]
    fire: str
    """That nothing here delays the fire; "" where something may."""
    before_you_go: tuple[str, ...]
    estimates: str
    """What `~` means; "" where no row has one."""


class ShiftPages(NamedTuple):
    """A page for each shift of a plan."""

    title: str
    language: str
    paper: str
    running: Running
    shifts: tuple[ShiftPage, ...]
    clock_changes: tuple[str, ...] = ()
    form: Literal["shift"] = "shift"
