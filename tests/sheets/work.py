"""From the text of a formula to its views, the way a build goes."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from fractions import Fraction

from manchet.batch.mixes import mixes_of
from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.totals import totals_of
from manchet.batch.weighing import System, weigh
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.sheets.card_view import timing_card
from manchet.sheets.prep_view import Prepared, prep_sheet
from manchet.sheets.views import House, Issue, PrepSheet, TimingCard
from manchet.source.text import SourceText
from manchet.timing.card.card import card_of
from manchet.timing.when import When
from manchet.workspace.bakery import batch_for, read

PLAIN_HOUSE = House()
ISSUE = Issue("Thu 26 Nov 2026", "tern.bake", "commit 4f2a91c", "9b1e07d4", "14 Nov 2026")


def prepared(
    text: str,
    house: House = PLAIN_HOUSE,
    order: Order = AS_WRITTEN,
    before: Mapping[str, Fraction] | None = None,
) -> Prepared:
    bakery = read([SourceText("tern.bake", text)])
    assert [d for d in bakery.diagnostics if d.severity.value == "error"] == []
    formula = bakery.formulas[0]
    batch = batch_for(formula, order, bakery.kitchen).value
    assert batch is not None
    totals = totals_of(formula, bakery.larder)
    mixes = mixes_of(batch, bakery.kitchen, totals.wet)
    system = System.US if house.units == "US" else System.METRIC
    tables = tuple(weigh(making, bakery.kitchen, system).value for making in mixes.makings)
    cautions = cautions_of(Work(AS_WRITTEN, batch, bakery.kitchen, bakery.larder))
    return Prepared(batch, mixes, tables, totals, bakery.kitchen, cautions, before or {})


def sheet(text: str, house: House = PLAIN_HOUSE, issue: Issue = ISSUE, **more: object) -> PrepSheet:
    return prep_sheet(prepared(text, house, **more), issue, house)  # type: ignore[arg-type]


def card(text: str, house: House = PLAIN_HOUSE, order: Order = AS_WRITTEN) -> TimingCard:
    work = prepared(text, house, order)
    ready = When(datetime(2026, 11, 28, 7, 0), True)
    return timing_card(card_of(work.batch, work.kitchen, work.mixes, ready), ISSUE, house)
