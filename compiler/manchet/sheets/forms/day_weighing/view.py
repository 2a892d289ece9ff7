"""What the weigh-up shows, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import CautionNote, WeighRow


class DayBowl(NamedTuple):
    """One bowl: its clock, whose it is, its rows, what goes in later, and what it then holds."""

    clocks: tuple[str, ...]
    """When it is wanted: of several mixes each."""
    bread: str
    stage: str
    note: str
    """`for 3 mixes`; with which other bread it is one tub."""
    rows: tuple[WeighRow, ...]
    later: tuple[WeighRow, ...]
    holds: str
    """`bowl 11,756 g`; "" where a single line says it."""
    cautions: tuple[CautionNote, ...] = ()


class DaySitting(NamedTuple):
    """What is weighed in one go."""

    title: str
    """`Friday, from 06:30 · Ines`"""
    bowls: tuple[DayBowl, ...]


class WeighUp(NamedTuple):
    """All bowls of a plan."""

    title: str
    language: str
    paper: str
    units: str
    running: Running
    sittings: tuple[DaySitting, ...]
    store: tuple[str, ...]
    """Each flour with its weight in all."""
    clock_changes: tuple[str, ...] = ()
    form: Literal["weighup"] = "weighup"
