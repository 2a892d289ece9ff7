"""What the page of preparations says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import AheadItem, AllergenLine, Box, CautionNote, Illustration, WeighRow


class WantedBy(NamedTuple):
    """A bread (or another preparation) and how much of it that wants."""

    name: str
    weight: str
    unit: str


class AheadRow(NamedTuple):
    """A preparation that is made ahead: how much is made, how much is wanted in all, and by whom."""

    name: str
    weight: str
    unit: str
    wanted: str
    """"" where no bread of this run wants it."""
    wanted_unit: str
    by: tuple[WantedBy, ...]
    is_bath: bool
    """What is wanted of it is what the bread takes up."""
    good_for: str


class LaterRow(NamedTuple):
    """A line that is weighed now and goes in later, under the letter that its step names."""

    letter: str
    row: WeighRow


class PreparationClause(NamedTuple):
    """One thing that is done: what goes in with it, under which conditions and until when."""

    done: str
    adds: tuple[LaterRow, ...] = ()
    how: str = ""
    until: str = ""
    ticks: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


class PreparationStep(NamedTuple):
    """A line of what is done in one go, with the cautions above it and the boxes for what happened."""

    clauses: tuple[PreparationClause, ...]
    boxes: tuple[Box, ...] = ()
    cautions: tuple[CautionNote, ...] = ()
    figures: tuple[Illustration, ...] = ()
    limits: tuple[Box, ...] = ()
    """For the readings that have a limit, which the file keeps to."""


class PreparationStage(NamedTuple):
    """What is weighed into one vessel and done with it: the preparation itself, or what is made apart and goes in by its name (a
    slurry, an oil that takes a flavour)."""

    title: str
    rows: tuple[WeighRow, ...]
    holds: str
    later: tuple[LaterRow, ...]
    cautions: tuple[CautionNote, ...]
    """Those of the weighing."""
    steps: tuple[PreparationStep, ...]
    notes: tuple[str, ...]
    figures: tuple[Illustration, ...]


class PreparationBlock(NamedTuple):
    """One preparation, unbroken on its page: weights left, what is done right, blanks to sign at its foot."""

    title: str
    about: str
    weight: str
    unit: str
    good_for: str
    least: str
    """Why more is made than is wanted, or ""."""
    stages: tuple[PreparationStage, ...]
    """In the order they are made: itself last, behind what goes into it."""
    swapped: tuple[str, ...]
    blanks: tuple[str, ...]
    is_steep: bool = False
    """What is done takes much more room than what is weighed: a caution stands there."""
    pieces: str = ""
    """`30 patties × 60 g` as they are weighed off."""
    ahead: tuple[AheadItem, ...] = ()
    """What of it is another preparation, made ahead."""
    contains: AllergenLine = AllergenLine()


class Preparations(NamedTuple):
    """What this run makes ahead."""

    title: str
    language: str
    paper: str
    running: Running
    ahead: tuple[AheadRow, ...]
    """Empty on the page of a preparation that was asked for by name."""
    blocks: tuple[PreparationBlock, ...]
    """Those with cautions after the others."""
    form: Literal["preparations"] = "preparations"
