"""What a sheet says of its water, ready to print."""

from __future__ import annotations

from typing import NamedTuple


class WaterCell(NamedTuple):
    """Water at one flour and one room: its temperature, and the ice that is part of it ("" for none)."""

    figure: str
    ice: str


class WaterRow(NamedTuple):
    """The water at one flour temperature, for each room."""

    flour: str
    cells: tuple[WaterCell, ...]
    """One for each of `rooms`."""


class Hot(NamedTuple):
    """A stage that goes in hot: its name, how warm it is taken to be, and what a warmer one does to the water."""

    name: str
    taken: str
    beside: str


class Water(NamedTuple):
    """How warm the water is to be. Without a kitchen's temperatures: base and rule alone, for the baker to fill in."""

    base: str
    rule: str
    liquid: str
    figure: str
    assumed: str
    """The figure's range, and at which flour and room."""
    rooms: tuple[str, ...]
    rows: tuple[WaterRow, ...]
    notes: tuple[str, ...]
    hot: tuple[Hot, ...] = ()
