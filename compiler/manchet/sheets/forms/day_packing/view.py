"""What divide and pack shows, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running


class DoughDivided(NamedTuple):
    """One dough that is divided, or one of its mixes."""

    clock: str
    bread: str
    mix: str
    """`mix 2 of 3`; "" for all of it."""
    dough: str
    pieces: tuple[str, ...]
    """`16 × 850 g loaves`"""
    to: str
    """Where they go: `shape round, rest, shape long, on linen`."""
    day: str = ""
    """The weekday, where it is another than of the dough before; "" on the page of one day."""


class PackCell(NamedTuple):
    """So many for one customer; "" for none."""

    number: str


class PackRow(NamedTuple):
    """One sort of a bread."""

    bread: str
    noun: str
    """`loaves`; "" where the bread's name ends in it."""
    cells: tuple[PackCell, ...]
    """A customer each, in the order of the heads."""
    spare: str
    in_all: str
    by: str
    """When it is to be there."""


class PackedCustomer(NamedTuple):
    """The head of a column."""

    name: str
    leaves: str
    """When theirs leaves, or is to be there."""


class PackingPage(NamedTuple):
    """Doughs, pieces and customers of a plan."""

    title: str
    language: str
    paper: str
    running: Running
    divide: tuple[DoughDivided, ...]
    customers: tuple[PackedCustomer, ...]
    has_spare: bool
    pack: tuple[PackRow, ...]
    departures: tuple[str, ...]
    """`van leaves Sat 06:00 with Quay cafe and the stall`"""
    form: Literal["packing"] = "packing"
