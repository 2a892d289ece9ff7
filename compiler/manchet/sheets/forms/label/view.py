"""What a label says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.label_paper import LabelPaper


class LabelRun(NamedTuple):
    """A part of a list of ingredients; `strong` where it names an allergen."""

    text: str
    strong: bool


class PanelRow(NamedTuple):
    """A line of the nutrition declaration, per 100 g. `indented`: it is a part of the line above."""

    name: str
    figure: str
    indented: bool = False
    of_slice: str = ""
    """The same of one slice, where it is sold sliced."""


class SaleLabel(NamedTuple):
    """The label of one food. Whatever it does not have to say is empty."""

    name: str
    called: str
    market: str
    contains: str
    ingredients: tuple[LabelRun, ...]
    allergens: str
    """How allergens are set off in the list."""
    may_contain: str
    panel: tuple[PanelRow, ...]
    slice: str
    """What stands over the figures of a slice: `1 of 20 slices, 21 g`; "" where it is not sold sliced."""
    net: str
    date_word: str
    date: str
    kept: tuple[str, ...]
    """How to store it, before and after it is opened."""
    lot: str
    address: str
    approved: bool
    """A person has approved this very label."""
    mark: str
    """By which whoever approves it says which label that is."""
    copies: int


class Labels(NamedTuple):
    """The labels of one formula, on a roll one after another, on sheets as many as there are pieces."""

    title: str
    language: str
    paper: str
    running: Running
    stock: LabelPaper
    labels: tuple[SaleLabel, ...]
    form: Literal["label"] = "label"
