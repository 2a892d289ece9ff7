"""From the text of a formula to its views, the way a build goes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime
from fractions import Fraction

from works import work_in

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.prep_sheet.view import LeafLine, PrepSheet, StageBlock, StagePart, Steps
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.forms.timing_card.view import TimingCard
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.source.text import SourceText
from manchet.timing.when import When
from manchet.workspace.bakery import read

PLAIN_HOUSE = House()
ISSUE = Issue("Thu 26 Nov 2026", "tern.bake", "commit 4f2a91c", "9b1e07d4", "14 Nov 2026")


def prepared(text: str, house: House = PLAIN_HOUSE, order: Order = AS_WRITTEN) -> Work:
    bakery = read([SourceText("tern.bake", text)])
    assert [d for d in bakery.diagnostics if d.severity.value == "error"] == []
    return work_in(bakery, bakery.formulas[0], order)


def sheet(
    text: str,
    house: House = PLAIN_HOUSE,
    issue: Issue = ISSUE,
    order: Order = AS_WRITTEN,
    before: Mapping[str, Fraction] | None = None,
) -> PrepSheet:
    return prep_sheet(prepared(text, house, order), issue, house, before or {})


def card(text: str, house: House = PLAIN_HOUSE, order: Order = AS_WRITTEN) -> TimingCard:
    work = prepared(text, house, order)
    return timing_card(work, When(datetime(2026, 11, 28, 7, 0), True), ISSUE, house)


def parts_of(view: PrepSheet | StageBlock) -> list[StagePart]:
    """All that is done: of a sheet on both its sides, of a stage beside its weights."""
    if isinstance(view, StageBlock):
        return list(view.parts)
    return [part for block in view.blocks for part in block.parts] + list(view.bench)


def lines_of(view: PrepSheet | StageBlock) -> Iterator[LeafLine]:
    for part in parts_of(view):
        if isinstance(part, Steps):
            yield from part.lines
