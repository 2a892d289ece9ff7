"""What is weighed off the dough: a row a sort, with its weight, its tin, and what is left at the scale."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch
from manchet.batch.pieces import added_after_dividing, left_at_the_scale
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.formula.nouns import noun_for
from manchet.sheets.forms.prep_sheet.view import DivideList, DivideRow
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.baked_weight import about_baked_cell, weigh_off_line
from manchet.sheets.parts.clauses import clause_of
from manchet.sheets.parts.views import CautionNote
from manchet.sheets.parts.wording import single

NOTABLE_REST = Fraction(5)
"""Grams of dough left at the scale that are worth a line. Our rule."""

NOTABLE_LACK = Fraction(1, 100)
"""Of the dough: what is missing beyond that is worth a line too. Our rule."""


def divide_list(
    step: Step, work: Work, notes: tuple[str, ...], cautions: tuple[CautionNote, ...], m: Measures
) -> DivideList:
    batch = work.batch
    off = tuple(filter(None, (weigh_off_line(p, batch, m) for p in batch.pieces)))
    rows = tuple(_divide_row(p, work, m) for p in batch.pieces)
    clause = clause_of(step, m)
    return DivideList(clause, rows, _dough_left(batch, m), off, (*wording.notes(step, m), *notes), cautions)


def _divide_row(p: PieceBatch, work: Work, m: Measures) -> DivideRow:
    added = added_after_dividing(work.formula, p.noun)
    weight, mixes = m.piece(p.grams / (1 + added)), work.mixes.number
    then = m.words.say("divide.with_added", m.each(p.grams)) if added else ""
    small = ", ".join(filter(None, (p.tin, then)))
    each = m.plain(single(p.number / mixes), 1) if mixes > 1 and (p.number / mixes).denominator == 1 else ""
    baked = about_baked_cell(p, work.formula, m)
    number, noun = m.plain(single(p.number), 1), noun_for(p.number, p.noun)
    return DivideRow(number, noun, weight.figure, weight.unit, small, baked, each)


def _dough_left(batch: Batch, m: Measures) -> str:
    left = left_at_the_scale(batch)
    if left < -max(NOTABLE_REST, batch.divided * NOTABLE_LACK):
        return m.words.say("sheet.dough_missing", m.about(-left))
    return m.words.say("sheet.dough_left", m.about(left)) if left > NOTABLE_REST else ""
