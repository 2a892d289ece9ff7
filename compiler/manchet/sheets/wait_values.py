"""What the timing card says of other waits than the file's, ready to print."""

from __future__ import annotations

from typing import NamedTuple


class Warmth(NamedTuple):
    """`the dough came out at 26 °C`: then about so long in bulk."""

    degrees: str
    bulk: str


class YeastCell(NamedTuple):
    """What to weigh, and small its per cent; both "" where nothing can be said. `written`: as the file has it."""

    weight: str
    percent: str
    written: bool


class YeastRow(NamedTuple):
    """The yeast for one wait at each warmth."""

    hours: str
    cells: tuple[YeastCell, ...]
    """One for each of `degrees`."""


class YeastTable(NamedTuple):
    """The yeast of one stage for other hours and degrees than the file's."""

    title: str
    degrees: tuple[str, ...]
    rows: tuple[YeastRow, ...]
    note: str
