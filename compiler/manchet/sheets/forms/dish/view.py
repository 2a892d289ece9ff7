"""What a dish sheet says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import AheadItem, AllergenLine, Box, CautionNote, Illustration


class PlateRow(NamedTuple):
    """What is laid on a plate next, or done with it: how much for one, for all, and how."""

    number: str
    weight: str
    """"" where nothing is laid on."""
    unit: str
    name: str
    beside: str
    """What one slice weighs, or why nobody can say."""
    in_all: str
    done: str
    how: str
    until: str
    notes: tuple[str, ...] = ()
    boxes: tuple[Box, ...] = ()
    cautions: tuple[CautionNote, ...] = ()
    figures: tuple[Illustration, ...] = ()


class StageRow(NamedTuple):
    """A line that is weighed for a stage of a dish, for all plates."""

    name: str
    weight: str
    unit: str
    notes: tuple[str, ...] = ()


class DishStage(NamedTuple):
    """What has work of its own before it goes on: its weights, and what is done with them."""

    title: str
    rows: tuple[StageRow, ...]
    steps: tuple[PlateRow, ...]
    cautions: tuple[CautionNote, ...]
    notes: tuple[str, ...]


class PartCaution(NamedTuple):
    """What is to be taken care of with something that was made ahead."""

    name: str
    caution: CautionNote


class DishSheet(NamedTuple):
    """A dish: what is made ahead, the stages of its own, and one plate from the bottom up."""

    title: str
    language: str
    paper: str
    running: Running
    status: str
    warning: str
    about: str
    amount: str
    """`24 plates`"""
    plate: str
    """What one weighs; "" where nobody can say."""
    ahead: tuple[AheadItem, ...]
    at_hand: tuple[AheadItem, ...]
    """What else goes on it, out of the larder."""
    of_parts: tuple[PartCaution, ...]
    """What its crew can still do about what was made ahead."""
    cautions: tuple[CautionNote, ...]
    stages: tuple[DishStage, ...]
    one: str
    """`One plate`"""
    all_of_them: str
    """`all 24`"""
    rows: tuple[PlateRow, ...]
    limit: str
    """Within which time it is served; "" where the file does not say."""
    rounds: str
    """In how many rounds, of how many plates."""
    notes: tuple[str, ...]
    figures: tuple[Illustration, ...]
    contains: AllergenLine = AllergenLine()
    form: Literal["dish"] = "dish"
