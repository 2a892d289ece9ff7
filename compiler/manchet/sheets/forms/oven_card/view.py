"""What an oven card says, ready to print: for each oven whose fire is out, what goes in, in order, and what does not."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Box, Illustration


class LeftOut(NamedTuple):
    """What does not fit into this fire: what it wants, and what the floor is when its turn comes."""

    name: str
    wants: str
    floor_then: str


class LoadRow(NamedTuple):
    """One load. Clocks are of the day where the card has a start, else hours and minutes after the fire is out."""

    number: str
    name: str
    load: str
    """`24 loaves`, `load 2 of 3, 24 loaves`; "" where it is not counted."""
    into: str
    latest: str
    """Until when the floor has its heat."""
    floor: str
    """The heat it wants, in the degrees of the head: `220–240`."""
    minutes: str
    out: str
    then: tuple[str, ...]
    """Steam and damper, the phases after the first, what the eye and the thermometer wait for."""
    colder: str = ""
    """`Floor under 250? Load 4 first`; "" where nothing is won by that."""


class FallingOven(NamedTuple):
    """One oven, from the clock at which its fire is out."""

    oven: str
    fire_out: str
    """`fire out 06:35 at 330 °C`, or that the hours count from there."""
    boxes: tuple[Box, ...]
    rules: tuple[str, ...]
    """How it is read, how it falls, what a load takes."""
    burning: tuple[str, ...]
    """What bakes beside the fire or at the mouth, before it is out: a line each."""
    left_out: tuple[LeftOut, ...]
    curve: Illustration | None
    loads: tuple[LoadRow, ...]
    after: tuple[str, ...]
    """How hot it still is when the last load is out, and later."""
    notes: tuple[str, ...]


class OvenCard(NamedTuple):
    """What goes into the falling ovens of a kitchen, in order; posted at the oven."""

    title: str
    language: str
    paper: str
    running: Running
    missing: str
    """What is not on it because of a mistake in its file, or ""."""
    degree: str
    """Of all floors: `°C`."""
    ovens: tuple[FallingOven, ...]
    form: Literal["oven"] = "oven"
