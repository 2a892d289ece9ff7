"""What is done in a stage, as the prep sheet has it: lines with their boxes, the divide list, the phases of a bake."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch, StageBatch
from manchet.batch.pieces import added_after_dividing, left_at_the_scale
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.formula.nouns import noun_for
from manchet.sheets.forms.prep_sheet.bake_table import bake_table
from manchet.sheets.forms.prep_sheet.view import DivideList, DivideRow, IllustrationRow, StagePart, Steps, WayHeading
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.baked_weight import about_baked_cell, weigh_off_line
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.far_from_written import far_step_notes
from manchet.sheets.parts.mixing import mixing_notes
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.step_pictures import bake_illustration, step_illustrations
from manchet.sheets.parts.steps import for_the_sort, step_line, worked_in_rows
from manchet.sheets.parts.views import Illustration, StepLine, WeighRow
from manchet.sheets.parts.wording import single


def stage_parts(batch: StageBatch, bowl: Bowl, work: Work, pictures: Pictures, m: Measures) -> list[StagePart]:
    """All that is done in a stage, and after the dough, the way of each sort."""
    branches = work.formula.branches if batch is work.dough else ()
    after = tuple(step for branch in branches for step in branch.steps)
    shown = own_illustrations(batch.stage.pictures, pictures)
    parts: list[StagePart] = [IllustrationRow(shown)] if shown else []
    drawn = step_illustrations(batch.stage.steps, "", after, work, pictures, m)
    parts += _tables(batch.stage.steps, drawn, bowl, bowl.numbers, work, pictures, m, batch)
    for branch in branches:
        adds = worked_in_rows(branch, work.batch, m)
        parts.append(WayHeading(for_the_sort(branch.noun, work.batch, m)))
        drawn = step_illustrations(branch.steps, branch.noun, (), work, pictures, m)
        parts += _tables(branch.steps, drawn, adds, (), work, pictures, m, None, branch.noun)
    return parts


def page_groups(parts: Sequence[StagePart]) -> tuple[tuple[StagePart, ...], ...]:
    """A new group begins after the divide list, and where the way of a sort begins."""
    found: list[list[StagePart]] = [[]]
    for part in parts:
        if isinstance(part, WayHeading) and found[-1]:
            found.append([])
        found[-1].append(part)
        if isinstance(part, DivideList):
            found.append([])
    return tuple(tuple(group) for group in found if group) or ((),)


def _tables(
    steps: Sequence[Step],
    drawn: Sequence[tuple[Illustration, ...]],
    adds: Bowl | Mapping[str, WeighRow],
    numbers: tuple[str, ...],
    work: Work,
    pictures: Pictures,
    m: Measures,
    stage: StageBatch | None,
    noun: str = "",
) -> list[StagePart]:
    """Steps in tables that belong together: ordinary lines, the divide list, the phases of a bake."""
    parts: list[StagePart] = []
    lines: list[StepLine] = []
    phases: list[Step] = []
    baking: list[Illustration] = []
    last = next((step for step in reversed(steps) if step.verb == "bake"), None)

    def close() -> None:
        if lines:
            parts.append(Steps(tuple(lines)))
            lines.clear()
        if phases:
            bake = bake_table(work, phases, phases[-1] is last, noun, m)
            far = far_step_notes(work, "bake", stage, noun, m)
            parts.append(bake._replace(notes=(*bake.notes, *far)))
            row = (*bake_illustration(phases, pictures, m), *baking)
            if row:
                parts.append(IllustrationRow(row))
            baking.clear()
            phases.clear()

    for step, shown in zip(steps, drawn, strict=True):
        if step.verb == "bake":
            if not phases:
                close()
            phases.append(step)
            baking += shown
            continue
        if phases:
            close()
        line = step_line(step, adds, numbers, m)
        far = far_step_notes(work, step.verb, stage, noun, m)
        beside = mixing_notes(step, stage, work, m)
        lines.append(line._replace(notes=(*line.notes, *far, *beside), figures=shown))
        if step.verb == "divide":
            numbers = ()
            close()
            if work.batch.pieces:
                parts.append(_divide_list(work.batch, m))
    close()
    return parts


def _divide_list(batch: Batch, m: Measures) -> DivideList:
    off = tuple(filter(None, (weigh_off_line(p, batch, m) for p in batch.pieces)))
    return DivideList(tuple(_divide_row(p, batch, m) for p in batch.pieces), _dough_left(batch, m), off)


def _divide_row(p: PieceBatch, batch: Batch, m: Measures) -> DivideRow:
    added = added_after_dividing(batch.formula, p.noun)
    weight = m.piece(p.grams / (1 + added))
    baked = about_baked_cell(p, batch.formula, m)
    then = m.words.say("divide.with_added", m.each(p.grams)) if added else ""
    small = ", ".join(filter(None, (p.tin, then)))
    return DivideRow(m.plain(single(p.number), 1), noun_for(p.number, p.noun), weight.figure, weight.unit, small, baked)


def _dough_left(batch: Batch, m: Measures) -> str:
    left = left_at_the_scale(batch)
    if left < -max(NOTABLE_REST, batch.divided * NOTABLE_LACK):
        return m.words.say("sheet.dough_missing", m.about(-left))
    return m.words.say("sheet.dough_left", m.about(left)) if left > NOTABLE_REST else ""


NOTABLE_REST = Fraction(5)
"""Grams of dough left at the scale that are worth a line. Our rule."""

NOTABLE_LACK = Fraction(1, 100)
"""Of the dough: what is missing beyond that is worth a line too. Our rule."""
