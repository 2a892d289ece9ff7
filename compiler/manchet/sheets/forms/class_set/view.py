"""What a class set says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import AllergenLine, OverallShare


class ClassRow(NamedTuple):
    """A line of the weigh-out: what one set has, and what all sets have together."""

    name: str
    weight: str
    unit: str
    all_weight: str
    all_unit: str


class ClassStage(NamedTuple):
    """The lines of one stage, of a preparation, or of what is used beside them."""

    title: str
    rows: tuple[ClassRow, ...]


class ClassSet(NamedTuple):
    """The teacher's side: the sets to weigh out, a tick for each, the answers, and a row of notes for each bench."""

    title: str
    language: str
    paper: str
    running: Running
    sets: str
    """How many sets there are, and for whom."""
    makes: tuple[str, ...]
    """What one bench makes."""
    ticks: tuple[str, ...]
    """What stands over the tick boxes: a number for each bench, then those to show and to spare; () where they are too many
    for a line, which then has one."""
    stages: tuple[ClassStage, ...]
    answers_head: str
    """Of what the per cents are."""
    answers: tuple[OverallShare, ...]
    swapped: tuple[str, ...]
    """What was swapped, and which waits were moved, with their per cents."""
    readings: tuple[str, ...]
    """What is written down of each bench."""
    benches: tuple[str, ...]
    contains: AllergenLine = AllergenLine()
    form: Literal["class"] = "class"
