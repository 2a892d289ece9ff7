"""What the label of a tub says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.label_paper import LabelPaper
from manchet.sheets.parts.views import AllergenLine, CautionNote


class KeepingWay(NamedTuple):
    """One way of keeping it: `≤ 4 °C`, and until when."""

    at: str
    use_by: str


class TubLabel(NamedTuple):
    """The label of one preparation. Who made it, and at what hour, is for the pen."""

    name: str
    allergens: AllergenLine
    ask: bool
    """Of some of it nobody knows the allergens: an empty place must not read as none."""
    made: str
    ways: tuple[KeepingWay, ...]
    cautions: tuple[CautionNote, ...]
    copies: int = 1


class TubLabels(NamedTuple):
    """The label of the tub of one preparation."""

    title: str
    language: str
    paper: str
    running: Running
    stock: LabelPaper
    labels: tuple[TubLabel, ...]
    form: Literal["tub"] = "tub"
