"""What the data says of one hazard."""

from __future__ import annotations

from typing import Literal

from manchet.cautions.phrase import Wording
from manchet.records import NamedTuple

Level = Literal["top", "warning", "note", "limit"]
"""How much is printed: of a limit only the boxes for the pen; the others say their sentence, a top on every page in full."""
WORST_FIRST: tuple[Level, ...] = ("top", "warning", "note", "limit")
Of = Literal["formula", "hands", "house", "eater"]


class PenBox(NamedTuple):
    """A place for the pen. Its label carries the limit and, in two or three words, what to do beyond it."""

    label: Wording
    unit: Literal["", "C", "percent"] = ""
    unless: str = ""
    """Left out where the step brings a figure of this name: another box has it."""


class Said(NamedTuple):
    """What is printed of a hazard in one language."""

    words: Wording
    limit: Wording = ()
    """The figure to hold, () where there is none."""
    own_limit: Wording = ()
    """The same in the step's own figures, for where it has all of them; () where there is no such wording."""
    if_missed: Wording = ()
    """What to do when it has gone wrong."""
    boxes: tuple[PenBox, ...] = ()


class Hazard(NamedTuple):
    """A hazard before it is met in a formula."""

    level: Level
    of: Of
    """A "formula" has it at a step; those of the "house" stand on one posted card, and the sheet only points to it. What "hands"
    know from the card has its step in a handout, where no card hangs. The "eater" is told on card, label and handout, not the
    crew."""
    catchword: str
    """What it is called in large letters on the posted card."""
    in_full: bool
    """In full at every step where hands meet it; others in full once a formula, and then with their limit alone."""
    british: Said
    american: Said
    source: str
    """Who says so, in a few words, with the year where it is known."""
    address: str
    """Where that is to be read."""
