"""Each picture where it first stands, and nowhere again."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.sheets.forms.prep_sheet.view import IllustrationRow, StageBlock, StagePart, Steps
from manchet.sheets.parts.step_pictures import lines_beside
from manchet.sheets.parts.views import Illustration

LINE = 11
"""Millimetres of a step's line on the prep sheet, with its box."""


def without_repeats(blocks: Iterable[StageBlock]) -> tuple[StageBlock, ...]:
    """The blocks with each picture where it first stands, and nowhere again."""
    seen: set[tuple[str, str]] = set()
    return tuple(block._replace(parts=tuple(_first_seen(group, seen) for group in block.parts)) for block in blocks)


def _first_seen(group: Iterable[StagePart], seen: set[tuple[str, str]]) -> tuple[StagePart, ...]:
    """The parts of a group without what was seen before; what is seen now is noted. A row of none is left out."""

    def new(figures: tuple[Illustration, ...]) -> tuple[Illustration, ...]:
        kept = []
        for one in figures:
            if (one.svg, one.data) not in seen:
                seen.add((one.svg, one.data))
                kept.append(one)
        return tuple(kept)

    found: list[StagePart] = []
    for part in group:
        if isinstance(part, Steps):
            lines = [line._replace(figures=new(line.figures)) for line in part.lines]
            rows = lines_beside([line.figures for line in lines], LINE)
            part = Steps(tuple(line._replace(rows=n) for line, n in zip(lines, rows, strict=True)))
        elif isinstance(part, IllustrationRow):
            part = IllustrationRow(new(part.figures))
            if not part.figures:
                continue
        found.append(part)
    return tuple(found)
