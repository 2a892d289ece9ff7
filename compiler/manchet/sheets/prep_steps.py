"""What is done in a stage, as the prep sheet has it: lines with their boxes, the divide list, the phases of a bake."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch, StageBatch
from manchet.batch.pieces import added_after_dividing, left_at_the_scale, worked_in
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Branch, Step
from manchet.formula.nouns import counted, same_noun
from manchet.sheets import baked_view, views, wording
from manchet.sheets.bake_view import bake_part
from manchet.sheets.far_view import step_notes
from manchet.sheets.measures import Measures
from manchet.sheets.mixing_view import mixing_notes
from manchet.sheets.own_pictures import Pictures, own
from manchet.sheets.step_pictures import curve_of, pictures_of_steps
from manchet.sheets.views import Box, Divide, Figure, Figures, Line, Part, Row, Steps
from manchet.sheets.weigh_view import Bowl
from manchet.syntax.vocabulary import BRINGS_IN


def parts_of(batch: StageBatch, bowl: Bowl, work: Work, pictures: Pictures, m: Measures) -> list[Part]:
    """All that is done in a stage, and after the dough, the way of each sort."""
    branches = work.formula.branches if batch is work.dough else ()
    after = tuple(step for branch in branches for step in branch.steps)
    shown = own(batch.stage.pictures, pictures)
    parts: list[Part] = [Figures(shown)] if shown else []
    drawn = pictures_of_steps(batch.stage.steps, "", after, work, pictures, m)
    parts += _grouped(batch.stage.steps, drawn, bowl, bowl.numbers, work, pictures, m, batch)
    for branch in branches:
        adds = branch_adds(branch, work.batch, m)
        parts.append(views.Branch(for_the(branch.noun, work.batch, m)))
        drawn = pictures_of_steps(branch.steps, branch.noun, (), work, pictures, m)
        parts += _grouped(branch.steps, drawn, adds, (), work, pictures, m, None, branch.noun)
    return parts


def groups(parts: Sequence[Part]) -> tuple[tuple[Part, ...], ...]:
    """A new group begins after the divide list, and where the way of a sort begins."""
    found: list[list[Part]] = [[]]
    for part in parts:
        if isinstance(part, views.Branch) and found[-1]:
            found.append([])
        found[-1].append(part)
        if isinstance(part, Divide):
            found.append([])
    return tuple(tuple(group) for group in found if group) or ((),)


def _grouped(
    steps: Sequence[Step],
    drawn: Sequence[tuple[Figure, ...]],
    adds: Bowl | Mapping[str, Row],
    numbers: tuple[str, ...],
    work: Work,
    pictures: Pictures,
    m: Measures,
    stage: StageBatch | None,
    noun: str = "",
) -> list[Part]:
    """Steps in tables that belong together: ordinary lines, the divide list, the phases of a bake."""
    parts: list[Part] = []
    lines: list[Line] = []
    phases: list[Step] = []
    baking: list[Figure] = []
    last = next((step for step in reversed(steps) if step.verb == "bake"), None)

    def close() -> None:
        if lines:
            parts.append(Steps(tuple(lines)))
            lines.clear()
        if phases:
            bake = bake_part(work, phases, phases[-1] is last, noun, m)
            far = step_notes(work, "bake", stage, noun, m)
            parts.append(bake._replace(notes=(*bake.notes, *far)))
            row = (*curve_of(phases, pictures, m), *baking)
            if row:
                parts.append(Figures(row))
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
        line = line_of(step, adds, numbers, m)
        far = step_notes(work, step.verb, stage, noun, m)
        beside = mixing_notes(step, stage, work, m)
        lines.append(line._replace(notes=(*line.notes, *far, *beside), figures=shown))
        if step.verb == "divide":
            numbers = ()
            close()
            if work.batch.pieces:
                parts.append(_divide(work.batch, m))
    close()
    return parts


def line_of(step: Step, adds: Bowl | Mapping[str, Row], numbers: tuple[str, ...], m: Measures) -> Line:
    rows: list[Row] = []
    notes, boxes = list(wording.notes(step, m)), wording.boxes(step, m)
    text = wording.sentence(step, m)
    if step.verb in BRINGS_IN:
        felt = [goes for goes in step.goes if wording.feels(goes)]
        for goes in step.goes:
            if goes in felt:
                continue
            row = adds.added(goes) if isinstance(adds, Bowl) else adds.get(goes.key)
            rows.append(row if row is not None else Row(goes.name, "", ""))
        if felt:
            text = f"{text} {', '.join(goes.name for goes in felt)} {m.words['say.by_feel']}"
            boxes = (Box(m.words["box.went_in"], m.weight_unit()), *boxes)
            if isinstance(adds, Bowl):
                notes = [adds.jug(goes) for goes in felt] + notes
    elif step.goes and isinstance(adds, Bowl):
        text = f"{text} {_moved(step, adds.table.making.stage, m)}"
    if numbers:
        boxes = tuple(b._replace(label=f"{n} {b.label}") for b in boxes for n in numbers)
    return Line(text, wording.look(step, m), tuple(notes), tuple(rows), boxes, wording.counts(step, m))


def _moved(step: Step, batch: StageBatch, m: Measures) -> str:
    """`60 g as ripe rye starter` that is kept, `53 g ripe rye starter` that goes back, `41 g water` that tops up."""
    if step.verb == "top up":
        return " ".join([m.mass(batch.topped_up), *(goes.name for goes in step.goes)])
    moved = {fold(name): grams for name, grams in (batch.kept if step.verb == "keep" else batch.returned)}
    said = []
    for goes in step.goes:
        grams = moved.get(goes.key)
        how = next((keep.how for keep in batch.stage.keeps if fold(keep.name) == goes.key), "")
        amount = m.words["say.what_is_left"] if how == "left" or grams is None else m.mass(grams)
        said.append(m.words.say("say.keep" if step.verb == "keep" else "say.back", amount, goes.name))
    return ", ".join(said)


def _divide(batch: Batch, m: Measures) -> Divide:
    off = tuple(filter(None, (baked_view.weigh_off(p, batch, m) for p in batch.pieces)))
    return Divide(tuple(_sort(p, batch, m) for p in batch.pieces), _rest(batch, m), off)


def _sort(p: PieceBatch, batch: Batch, m: Measures) -> views.Sort:
    added = added_after_dividing(batch.formula, p.noun)
    weight = m.piece(p.grams / (1 + added))
    baked = baked_view.in_the_list(p, batch.formula, m)
    then = m.words.say("divide.with_added", m.each(p.grams)) if added else ""
    small = ", ".join(filter(None, (p.tin, then)))
    return views.Sort(
        m.plain(wording.once(p.number), 1), counted(p.number, p.noun), weight.figure, weight.unit, small, baked
    )


def _rest(batch: Batch, m: Measures) -> str:
    left = left_at_the_scale(batch)
    if left < -max(NOTABLE_REST, batch.divided * NOTABLE_LACK):
        return m.words.say("divide.short", m.about(-left))
    return m.words.say("divide.rest", m.about(left)) if left > NOTABLE_REST else ""


NOTABLE_REST = Fraction(5)
"""Grams of dough left at the scale that are worth a line. Our rule."""

NOTABLE_LACK = Fraction(1, 100)
"""Of the dough: what is missing beyond that is worth a line too. Our rule."""


def for_the(noun: str, batch: Batch, m: Measures) -> str:
    """`for the rolls`, `for the loaf` where there is one."""
    number = sum((piece.number for piece in batch.pieces if same_noun(piece.noun, noun)), Fraction(0))
    return m.words.say("divide.for_the", counted(number, noun))


def branch_adds(branch: Branch, batch: Batch, m: Measures) -> dict[str, Row]:
    """What goes into the dough of one sort: a share of the dough that is divided for it."""
    rows = {}
    for portion, grams in worked_in(branch, batch):
        weight = m.piece(grams)
        note = m.words.say("divide.of_the_dough", m.percent(portion.share))
        rows[portion.key] = Row(portion.name, weight.figure, weight.unit, note, m.ounces(grams))
    return rows
