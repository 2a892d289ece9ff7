"""A step as one line of any form, with what is weighed in now; and what goes into the dough of one sort."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.pieces import branch_additions
from manchet.batch.tubs import given_back
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Branch, Goes, Step
from manchet.formula.nouns import noun_for, same_noun
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.views import Box, StepLine, WeighRow
from manchet.sheets.parts.wording import is_by_feel
from manchet.syntax.vocabulary import BRINGS_IN


def step_line(step: Step, adds: Bowl | Mapping[str, WeighRow], numbers: tuple[str, ...], m: Measures) -> StepLine:
    rows: list[WeighRow] = []
    notes, boxes = list(wording.notes(step, m)), wording.boxes(step, m)
    text = wording.sentence(step, m)
    if step.verb in BRINGS_IN:
        felt = [goes for goes in step.goes if is_by_feel(goes)]
        for goes in step.goes:
            if goes in felt:
                continue
            row = adds.added(goes) if isinstance(adds, Bowl) else adds.get(goes.key)
            rows.append(row if row is not None else WeighRow(goes.name, "", ""))
        if felt:
            text = f"{text} {', '.join(goes.name for goes in felt)} {m.words['say.by_feel']}"
            boxes = (Box(m.words["box.went_in"], m.weight_unit()), *boxes)
            if isinstance(adds, Bowl):
                notes = [adds.jug(goes) for goes in felt] + notes
    elif step.goes and isinstance(adds, Bowl):
        text = f"{text} {amount_moved(step, adds, m)}"
    if numbers:
        boxes = tuple(b._replace(label=f"{n} {b.label}") for b in boxes for n in numbers)
    return StepLine(text, wording.look(step, m), tuple(notes), tuple(rows), boxes, wording.counts(step, m))


def amount_moved(step: Step, bowl: Bowl, m: Measures) -> str:
    """`60 g as ripe rye starter` that is kept, `53 g ripe rye starter` that goes back, `41 g water` that tops up."""
    said = []
    for goes, grams in grams_moved(step, bowl):
        amount = m.words["say.what_is_left"] if grams is None else m.mass(grams)
        said.append(m.words.say("say.keep" if step.verb == "keep" else "say.back", amount, goes.name))
    return ", ".join(said)


def grams_moved(step: Step, bowl: Bowl) -> list[tuple[Goes, Fraction | None]]:
    """What a step keeps, gives back or tops up with, and how much of it; None for what is left."""
    batch = bowl.table.making.stage
    if step.verb == "top up":
        return [(goes, batch.topped_up) for goes in step.goes]
    moved = {
        fold(name): grams
        for name, grams in (batch.kept if step.verb == "keep" else given_back(bowl.table, bowl.tables))
    }
    left = {fold(keep.name) for keep in batch.stage.keeps if keep.how == "left"}
    return [(goes, None if goes.key in left else moved.get(goes.key)) for goes in step.goes]


def for_the_sort(noun: str, batch: Batch, m: Measures) -> str:
    """`for the rolls`, `for the loaf` where there is one."""
    number = sum((piece.number for piece in batch.pieces if same_noun(piece.noun, noun)), Fraction(0))
    return m.words.say("divide.for_the", noun_for(number, noun))


def worked_in_rows(branch: Branch, batch: Batch, m: Measures) -> dict[str, WeighRow]:
    """What goes into the dough of one sort: a share of the dough that is divided for it."""
    rows = {}
    for portion, grams in branch_additions(branch, batch):
        weight = m.piece(grams)
        note = m.words.say("divide.of_the_dough", m.percent(portion.share))
        rows[portion.key] = WeighRow(portion.name, weight.figure, weight.unit, note, m.ounces(grams))
    return rows
