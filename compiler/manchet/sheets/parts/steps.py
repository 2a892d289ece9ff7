"""A step as one line of any form, with what is weighed in now; and what goes into the dough of one sort."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.pieces import branch_additions
from manchet.batch.tubs import given_back
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Branch, Goes, PouredOff, Step
from manchet.formula.nouns import noun_for, same_noun
from manchet.records import NamedTuple
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.views import Box, StepLine, WeighRow
from manchet.sheets.parts.wording import is_by_feel
from manchet.syntax.vocabulary import BRINGS_IN


class StepGoods(NamedTuple):
    """What a step brings in, keeps, gives back or tops up with."""

    rows: tuple[WeighRow, ...] = ()
    """What goes in now, weighed."""
    moved: str = ""
    """What has no row of its own: `water by feel`, `60 g as ripe rye starter`."""
    notes: tuple[str, ...] = ()
    """How much there is in the jug, for what goes in by feel."""
    boxes: tuple[Box, ...] = ()
    """For how much of that went in."""


def step_goods(step: Step, adds: Bowl | Mapping[str, WeighRow], m: Measures) -> StepGoods:
    """`adds`: the bowl that the step works in, or the rows of the way of one sort."""
    if step.verb not in BRINGS_IN:
        moves = isinstance(adds, Bowl) and (step.goes or step.poured)
        return StepGoods(moved=amount_moved(step, adds, m) if moves and isinstance(adds, Bowl) else "")
    felt = [goes for goes in step.goes if is_by_feel(goes)]
    rows = tuple(_row(goes, adds) for goes in step.goes if goes not in felt)
    if not felt:
        return StepGoods(rows)
    moved = f"{', '.join(goes.name for goes in felt)} {m.words['say.by_feel']}"
    jugs = tuple(adds.jug(goes) for goes in felt) if isinstance(adds, Bowl) else ()
    return StepGoods(rows, moved, jugs, (Box(m.words["box.went_in"], m.weight_unit()),))


def _row(goes: Goes, adds: Bowl | Mapping[str, WeighRow]) -> WeighRow:
    row = adds.added(goes) if isinstance(adds, Bowl) else adds.get(goes.key)
    return WeighRow(goes.name, "", "") if row is None else row


def step_line(step: Step, adds: Bowl | Mapping[str, WeighRow], m: Measures) -> StepLine:
    """The step whole: its sentence, what is looked for, remarks, what goes in, and the boxes for what happened."""
    goods = step_goods(step, adds, m)
    text = " ".join(filter(None, (wording.sentence(step, m), goods.moved)))
    notes, boxes = (*goods.notes, *wording.notes(step, m)), (*goods.boxes, *wording.boxes(step, m))
    return StepLine(text, wording.look(step, m), notes, goods.rows, boxes, wording.counts(step, m))


def bakes_from(steps: Sequence[Step], at: int, end: int | None = None) -> tuple[Step, ...]:
    """The phases of one bake: the bakes that follow one another from `at` on, up to `end`."""
    end = len(steps) if end is None else end
    return tuple(steps[at : next((n for n in range(at, end) if steps[n].verb != "bake"), end)])


def amount_moved(step: Step, bowl: Bowl, m: Measures) -> str:
    """`60 g as ripe rye starter` that is kept, `53 g ripe rye starter` that goes back, `41 g water` that tops up."""
    if step.poured is not None:
        return m.words.say("say.back", m.mass(grams_poured(step.poured, bowl)), step.poured.name)
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
        for name, grams in (bowl.table.kept if step.verb == "keep" else given_back(bowl.table, bowl.tables))
    }
    left = {fold(keep.name) for keep in batch.stage.keeps if keep.how == "left"}
    return [(goes, None if goes.key in left else moved.get(goes.key)) for goes in step.goes]


def grams_poured(poured: PouredOff, bowl: Bowl) -> Fraction:
    """Grams that are poured off of one bowl."""
    making = bowl.table.making
    return poured.share * making.stage.size / making.times


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
