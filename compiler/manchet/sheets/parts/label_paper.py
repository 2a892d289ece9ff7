"""What labels are printed on: a roll, cut off where a label ends, or sheets of labels across and down."""

from __future__ import annotations

from fractions import Fraction

from manchet.kitchen.model import LabelStock
from manchet.quantities.printing import decimal
from manchet.records import NamedTuple
from manchet.sheets.page.layouts import PageLayout

LABEL_LAYOUTS = (PageLayout("normal"), PageLayout("close", 80), PageLayout("small", 65), PageLayout("small linear", 1))
"""The letters as large as there is room for: each is tried where the one before it has none. Where a table of nutrition has none it
is written in lines (Regulation (EU) 1169/2011, article 34)."""

USUAL_ROLL = LabelStock(roll=Fraction(62))
"""Where a kitchen does not say: a common width of a counter's printer. Our own rule."""

_SHEETS = {"A4": (Fraction(210), Fraction(297)), "Letter": (Fraction("215.9"), Fraction("279.4"))}
_LONGEST = 1000
"""Millimetres of a roll that no label is longer than."""


class LabelPaper(NamedTuple):
    """Lengths are millimetres, as a style sheet has them."""

    size: str
    """Of the page: `62mm 1000mm`, `A4`."""
    is_roll: bool
    across: int
    down: int
    width: str
    height: str
    """Of one label; of a roll it is where the text ends."""


def label_paper(stock: LabelStock | None, paper: str) -> LabelPaper:
    """`paper` is that of the house, where the stock does not name its own."""
    stock = stock or USUAL_ROLL
    if stock.roll is not None:
        width = f"{decimal(stock.roll, 1)}mm"
        return LabelPaper(f"{width} {_LONGEST}mm", True, 1, 1, width, "auto")
    name = stock.paper or paper
    wide, high = _SHEETS[name]
    width, height = (_part(wide, stock.across), _part(high, stock.down))
    return LabelPaper(name, False, stock.across, stock.down, width, height)


def _part(side: Fraction, number: int) -> str:
    """A hair less than an equal part, so that as many as are wanted stand side by side however they are rounded."""
    return f"{decimal(side / number - Fraction(1, 100), 2)}mm"
