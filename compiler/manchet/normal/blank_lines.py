"""Blank lines: one at most in a place, one before a block and before each part of a formula, none at the ends of a file."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.records import NamedTuple


class LaidLine(NamedTuple):
    """A line of a file as it is to be written; "" for a blank one. `opens_part`: a block, or a stage of a formula, begins with it."""

    text: str
    indent: int = 0
    is_remark: bool = False
    opens_part: bool = False


def well_spaced(rows: Sequence[LaidLine]) -> list[str]:
    """The lines with the blank ones set right. Remarks right above a heading, and as deep, belong to it."""
    parted: set[int] = set()
    for at, row in enumerate(rows):
        if row.opens_part:
            while at and rows[at - 1].is_remark and rows[at - 1].indent == row.indent:
                at -= 1
            parted.add(at)
    lines: list[str] = []
    for at, row in enumerate(rows):
        if row.text:
            if at in parted and lines and lines[-1]:
                lines.append("")
            lines.append(row.text)
        elif lines and lines[-1]:
            lines.append("")
    while lines and not lines[-1]:
        lines.pop()
    return lines
