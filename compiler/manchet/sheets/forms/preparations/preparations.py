"""The preparations of a run, as they are printed: the list of what is made ahead, then a block for each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.model import PieceBatch, StageBatch
from manchet.batch.preparations_needed import preparations_needed
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.figures.baths import Because, is_liquid
from manchet.formula.nouns import noun_for
from manchet.sheets.form import Ahead
from manchet.sheets.forms.preparations.view import (
    AheadRow,
    LaterRow,
    PreparationBlock,
    PreparationClause,
    Preparations,
    PreparationStage,
    PreparationStep,
    WantedBy,
)
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import NBSP, Measures, Weight
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import cautions_at_step, cautions_of_stage, limits_at_step, read_once
from manchet.sheets.parts.far_from_written import far_stage_notes
from manchet.sheets.parts.good_for import good_for
from manchet.sheets.parts.joining import Joinable, lines_of, run_on, seconds_waited
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.step_pictures import step_illustrations
from manchet.sheets.parts.steps import step_line
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.views import AheadItem
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.sheets.parts.wording import done_and_how, is_by_feel, single

LINE = 80
"""So many letters of a line that has its boxes beside it. Our own rule."""


def preparations(ahead: Sequence[Ahead], issue: Issue, house: House, pictures: Pictures) -> Preparations:
    words = words_of(house.words)
    m = Measures(house, words)
    listed = any(each.by for each in ahead) or len(ahead) > 1
    return Preparations(
        title=words["preparations.make_ahead"] if listed else ahead[0].work.formula.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(words["preparations.title"], "", issue),
        ahead=tuple(_row(each, m) for each in ahead) if listed else (),
        blocks=tuple(sorted((_block(each, pictures, m) for each in ahead), key=lambda block: block.is_steep)),
    )


def _is_cautioned(stage: PreparationStage) -> bool:
    return any(step.cautions for step in stage.steps)


def _row(each: Ahead, m: Measures) -> AheadRow:
    made, wanted = _mass(each.work.batch.dough, m), _mass(each.wanted, m)
    by = tuple(WantedBy(name, *_mass(grams, m)) for name, grams in each.by)
    return AheadRow(
        each.work.formula.name, made.figure, made.unit, wanted.figure if each.wanted else "", wanted.unit if each.wanted else "",
        by if len(by) != 1 else (WantedBy(by[0].name, "", ""),), _is_bath(each), good_for(each.work, m),
    )  # fmt: skip


def _mass(grams: Fraction, m: Measures) -> Weight:
    """A weight that is spoken of, its figure and its unit apart."""
    figure, _, unit = m.mass(grams).rpartition(NBSP)
    return Weight(figure, unit)


def _is_bath(each: Ahead) -> bool:
    return each.dipped and is_liquid(each.work.formula)


def _holds(bowl: Bowl) -> str:
    """`pot 602 g`: what the scale shows when all is in."""
    holds = bowl.holds()
    return "" if holds is None else bowl.m.words.say("preparations.holds", bowl.vessel, str(holds))


def _block(each: Ahead, pictures: Pictures, m: Measures) -> PreparationBlock:
    work, formula = each.work, each.work.formula
    *before, own = (_stage(Bowl(table, work, m), pictures) for table in weighings(work, m.system).value)
    made = _mass(work.batch.dough, m)
    stages = (*before, own._replace(title=formula.name, steps=(*own.steps, *_kept(work, m))))
    return PreparationBlock(
        title=formula.name,
        about=formula.about,
        weight=made.figure,
        unit=made.unit,
        good_for=good_for(work, m),
        least=_least(each, m),
        stages=stages,
        is_steep=any(map(_is_cautioned, stages)),
        swapped=(*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        blanks=m.words.several("preparations.blanks"),
        pieces=", ".join(_pieces(piece, m) for piece in work.batch.pieces),
        ahead=tuple(_goes_in(work, m)),
        contains=allergen_line(work, m),
    )


def _pieces(piece: PieceBatch, m: Measures) -> str:
    number, noun = m.plain(single(piece.number), 1), noun_for(piece.number, piece.noun)
    return m.words.say("head.pieces", number, noun, str(m.piece(piece.grams)))


def _goes_in(work: Work, m: Measures) -> Iterator[AheadItem]:
    """What of other preparations goes into this one, or touches it."""
    for key, grams in preparations_needed(work.batch).items():
        made = work.preparations.get(key)
        if made is not None and grams:
            weight = _mass(grams, m)
            yield AheadItem(made.name, weight.figure, weight.unit)


def _stage(bowl: Bowl, pictures: Pictures) -> PreparationStage:
    m, batch = bowl.m, bowl.table.making.stage
    of_all = bowl.work.formula.pictures if batch is bowl.work.dough else ()
    return PreparationStage(
        title=batch.stage.name,
        rows=bowl.rows(held=False),
        holds=_holds(bowl),
        later=tuple(LaterRow(row.letter, row._replace(letter="")) for row in bowl.later()),
        cautions=cautions_of_stage(cautions_of(bowl.work), batch.stage.key, m),
        steps=_steps(bowl, batch, pictures),
        notes=(*far_stage_notes(batch, m), *batch.stage.notes),
        figures=own_illustrations((*of_all, *batch.stage.pictures), pictures),
    )


def _kept(work: Work, m: Measures) -> Iterator[PreparationStep]:
    """Its `good for` as a last step, with the cautions on it."""
    stage, found = work.dough.stage, cautions_of(work)
    above = cautions_at_step(found, stage.key, len(stage.steps), m)
    limits = limits_at_step(found, stage.key, len(stage.steps), m)
    if above or limits:
        says = m.words.say("preparations.kept", good_for(work, m))
        yield PreparationStep((PreparationClause(says),), (), above, (), limits)


def _least(each: Ahead, m: Measures) -> str:
    match each.because:
        case Because.FILE:
            return m.words["preparations.least"]
        case Because.WRITTEN:
            return m.words["ahead.kettle"]
        case Because.USUAL:
            return m.words["preparations.least_usual"]
    return ""


def _steps(bowl: Bowl, batch: StageBatch, pictures: Pictures) -> tuple[PreparationStep, ...]:
    m, stage = bowl.m, batch.stage
    cautions = cautions_of(bowl.work)
    drawn = step_illustrations(stage.steps, "", (), bowl.work, pictures, m)
    singly, joinable = [], []
    for at, step in enumerate(stage.steps):
        line = step_line(step, bowl, m)
        stands = step.goes and (not line.adds or any(is_by_feel(goes) for goes in step.goes))
        done, how = (line.text, "") if stands else done_and_how(step, m)  # what is moved stands in the sentence
        letters = {goes.name: bowl.letters.get(goes.key, "") for goes in step.goes}
        adds = tuple(LaterRow(letters.get(row.name, ""), row) for row in line.adds)
        above = cautions_at_step(cautions, stage.key, at, m)
        clause = PreparationClause(done, adds, how, line.look, line.counts, line.notes)
        limits = limits_at_step(cautions, stage.key, at, m)
        singly.append(PreparationStep((clause,), read_once(line.boxes, limits, m), above, drawn[at], limits))
        reads = len(line.boxes) > 1 or bool(line.look or line.counts or line.notes or limits)
        joinable.append(Joinable(_length(clause), seconds_waited(step), bool(above), reads, bool(drawn[at])))
    return tuple(_joined([singly[n] for n in line]) for line in lines_of(joinable, LINE))


def _joined(steps: Sequence[PreparationStep]) -> PreparationStep:
    """Of what is done in one go the boxes stand once, and are for its end."""
    first, *others = (clause for step in steps for clause in step.clauses)
    clauses = (first, *(clause._replace(done=run_on(clause.done)) for clause in others))
    figures = next((step.figures for step in steps if step.figures), ())
    return PreparationStep(clauses, steps[-1].boxes, steps[0].cautions, figures, steps[-1].limits)


def _length(clause: PreparationClause) -> int:
    rows = sum(len(one.row.name) + len(one.row.weight) + len(one.row.unit) + 7 for one in clause.adds)
    return len(clause.done) + len(clause.how) + rows + 3
