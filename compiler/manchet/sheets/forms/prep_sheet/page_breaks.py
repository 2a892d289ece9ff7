"""About how high things stand on paper, and so where a stage may break: never to save a little room, only for a page."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil

from manchet.sheets.forms.prep_sheet.view import (
    BakeTable,
    DivideList,
    IllustrationRow,
    PrepSheet,
    StageBlock,
    StagePart,
    Steps,
    WayHeading,
)
from manchet.sheets.parts.views import BakePhase, CautionNote, StepLine, WeighRow

PAGES = {"A4": 250.0, "Letter": 232.0}
"""Millimetres of a page that are for the work: its height less the margins of the style."""

BROKEN = 25.0
"""What stays empty at the end of a page where a group breaks: a row with its picture does not."""

_LETTERS, _SMALL = 95, 145
"""About how many letters a line holds: of a caution, at 12 points; of the foot, at 8."""

_STEAM = 13
"""About how many letters the column of the steam holds."""


def with_page_breaks(sheet: PrepSheet) -> tuple[StageBlock, ...]:
    """The blocks, each with the word for each of its groups whether it may go over the end of a page.

    A group stays whole, unless it is higher than a page, or would leave more than half of one empty: then its weighing
    stays whole, and its steps go on overleaf. The foot goes with the last group: without room for it, some of that
    group's steps go overleaf with it, so that neither the foot stands alone nor a page stays empty for the group.
    """
    page, at, blocks = PAGES[sheet.paper], _head(sheet), []
    for number, block in enumerate(sheet.blocks, 1):
        flags = []
        for n, group in enumerate(block.parts):
            weighing = _weighing(block) if n == 0 else 0.0
            height = weighing + sum(_part(part) for part in group)
            is_last = n == len(block.parts) - 1
            height += 7 * len(block.goes) if is_last else 0
            foot = _foot(sheet) if is_last and number == len(sheet.blocks) else 0.0
            room = page - at % page
            first = 0.0 if n == 0 else _part(group[0]) if group and not isinstance(group[0], Steps) else 12.0
            begins = weighing + first <= room
            flows = height + foot > room and (height + foot > page or (room > page / 2 and begins))
            if height > room and not (flows and begins):
                at += room
            if height > page - at % page:
                at += BROKEN
            at += height
            flags.append(flows)
        blocks.append(block._replace(long=tuple(flags)))
    return tuple(blocks)


def _head(sheet: PrepSheet) -> float:
    height = (
        14.0 + 6 * bool(sheet.about) + 6 * bool(sheet.status) + 12 * bool(sheet.warning) + 9.6 * len(sheet.head) + 15
    )
    if sheet.water is not None:
        height += 28 + 6.5 * len(sheet.water.rows) + 7 * len(sheet.water.hot)
    return height + sum(_part(caution) for caution in sheet.cautions)


def _foot(sheet: PrepSheet) -> float:
    """The line about hazards, the overall formula and its totals, notes, and the blanks to sign."""
    overall = sum(len(one.name) + len(one.percent) + 4 for one in sheet.overall)
    totals = sum(len(fact.label) + len(fact.value) + 4 for fact in sheet.totals)
    lines = sum(ceil(letters / _SMALL) for letters in (overall, totals, len(sheet.flours), *map(len, sheet.notes)))
    return 38.0 + 4.2 * lines


def _weighing(block: StageBlock) -> float:
    """The heading of a stage, its weighing, and what is set aside."""
    height = 15 + 5 * len(block.notes) + 6 + sum(_row(row) for row in block.rows) + 8
    return height + (8 + sum(_row(row) for row in block.aside) if block.aside else 0)


def _row(row: WeighRow) -> float:
    return 13.0 if row.notes else 8.8


def _part(part: StagePart) -> float:
    match part:
        case Steps(lines):
            return 6 + sum(_line(line) for line in lines) + _beside(lines)
        case DivideList(sorts, _, off):
            return 6 + 9.5 * len(sorts) + 5 * len(off)
        case WayHeading():
            return 11.0
        case BakeTable(phases, _, notes):
            return 6 + sum(_phase(phase) for phase in phases) + 5 * sum(ceil(len(note) / _LETTERS) for note in notes)
        case IllustrationRow(figures):
            return 4.0 + max(figure.high for figure in figures)
        case CautionNote(_, words, limit, missed, boxes, source):
            said_in = sum(ceil(len(said) / _LETTERS) for said in (words, limit, missed, source))
            return 8 + 5.3 * said_in + 9.0 * len(boxes)


def _phase(phase: BakePhase) -> float:
    """Its line, with what does not fit into the narrow column of the steam."""
    return 15.0 + 5 * len(phase.notes) + 5 * max(0, ceil(len(phase.steam) / _STEAM) - 1)


def _beside(lines: Sequence[StepLine]) -> float:
    """What pictures take more than the lines they stand beside."""
    more = 0.0
    for at, line in enumerate(lines):
        pictures = sum(figure.high + 2.0 for figure in line.figures)
        more += max(0.0, pictures - sum(_line(one) for one in lines[at : at + line.rows]))
    return more


def _line(line: StepLine) -> float:
    beside = 11.4 * ceil(len(line.boxes) / 3)
    text = 6.5 + 8.5 * len(line.adds) + 4.5 * len(line.notes) + (8.0 if line.counts else 0)
    return max(beside, text)
