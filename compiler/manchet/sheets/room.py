"""About how high a part of a stage stands on paper: what cannot stay on one page anyway may begin on the page before."""

from __future__ import annotations

from math import ceil

from manchet.sheets.views import Bake, Block, Branch, Caution, Divide, Line, Part, Row, Steps

PAGES = {"A4": 250.0, "Letter": 232.0}
"""Millimetres of a page that are for the work: its height less the margins of the style."""

_LETTERS = 95
"""About how many 12-point letters a line of a caution holds."""


def is_long(block: Block, group: tuple[Part, ...], first: bool, paper: str) -> bool:
    """Whether a group is sure not to fit a page; `first`: it has the stage's heading and weighing above it."""
    height = sum(_part(part) for part in group)
    if first:
        height += 15 + 5 * len(block.notes) + 6 + sum(_row(row) for row in block.rows) + 8
        height += 8 + sum(_row(row) for row in block.aside) if block.aside else 0
    return height > PAGES[paper]


def _row(row: Row) -> float:
    return 13.0 if row.notes else 9.2


def _part(part: Part) -> float:
    match part:
        case Steps(lines):
            return 6 + sum(_line(line) for line in lines)
        case Divide(sorts):
            return 6 + 9.5 * len(sorts)
        case Branch():
            return 11.0
        case Bake(phases):
            return 6 + sum(15.0 + 5 * len(phase.notes) for phase in phases)
        case Caution(text, limit, boxes, missed, source):
            said_in = sum(ceil(len(said) / _LETTERS) for said in (text, limit, missed, source))
            return 8 + 5.3 * said_in + 9.0 * len(boxes)


def _line(line: Line) -> float:
    beside = 11.4 * ceil(len(line.boxes) / 3)
    text = 6.5 + 8.5 * len(line.adds) + 4.5 * len(line.notes) + (8.0 if line.counts else 0)
    return max(beside, text)
