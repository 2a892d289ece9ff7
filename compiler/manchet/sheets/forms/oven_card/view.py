"""What an oven card says, ready to print: for each oven whose fire is out, its way down and what goes in, in order."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Box, Fact


class LoadRow(NamedTuple):
    """One load. `when` is about when it goes in and `latest` until when the floor has its heat, after the fire is out."""

    number: str
    name: str
    load: str
    """`load 2 of 3, 24 loaves`; "" where it is not counted."""
    floor: str
    """The heat it wants: `220–240 °C`."""
    about: str
    """What the floor should show by then."""
    when: str
    latest: str
    minutes: str
    look: str
    colder: tuple[str, ...] = ()
    """What to do if the floor is under so much, a line each."""
    notes: tuple[str, ...] = ()


class FallingOven(NamedTuple):
    """One oven. `svg` is its curve, `title` the same in words."""

    oven: str
    facts: tuple[Fact, ...]
    boxes: tuple[Box, ...]
    title: str
    svg: str
    turns: tuple[LoadRow, ...]
    left_out: tuple[str, ...]
    """What does not fit into this fire, and why."""
    after: tuple[str, ...]
    """How hot it still is when the last load is out, and later."""
    notes: tuple[str, ...]


class OvenCard(NamedTuple):
    """What goes into the falling ovens of a kitchen, in order; posted at the oven."""

    title: str
    language: str
    paper: str
    running: Running
    about: str
    missing: str
    """What is not on it because of a mistake in its file, or ""."""
    ovens: tuple[FallingOven, ...]
    form: Literal["oven"] = "oven"
