"""The class set: one set as a bench gets it, and all sets together. Every set is the same, so that they come out even."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from fractions import Fraction

from manchet.batch.pieces import branch_additions
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.sheets.form import HomeWork
from manchet.sheets.forms.class_set.view import ClassRow, ClassSet, ClassStage
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.foot import overall_shares, per_cents_of
from manchet.sheets.parts.line_names import line_name
from manchet.sheets.parts.pieces_line import made_lines
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.wait_lines import wait_lines

SPARE = 10
"""One set to spare for every so many benches begun. Our own rule."""

MOST_TICKS = 16
"""So many boxes stand beside one another on a page."""


def sets_for(benches: int) -> int:
    """How many sets are weighed: one for each bench, one to show with, and the spare ones."""
    return benches + 1 + spare_for(benches)


def spare_for(benches: int) -> int:
    return -(-benches // SPARE)


def class_set(home: HomeWork, issue: Issue, house: House, benches: int) -> ClassSet:
    """The view, for one bench at least."""
    words = words_of(house.words)
    m = Measures(house._replace(units="metric"), words)
    benches, formula = max(benches, 1), home.work.formula
    sets = sets_for(benches)
    return ClassSet(
        title=formula.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(formula.name, words["class.title"], issue),
        sets=words.say(
            "class.sets" if benches > 1 else "class.one_bench", str(sets), str(benches), str(spare_for(benches))
        ),
        makes=made_lines(home.work, m),
        ticks=_ticks(benches, m),
        stages=tuple(stage for stage in _stages(home, sets, m) if stage.rows),
        answers_head=per_cents_of(formula, m),
        answers=overall_shares(formula, {}, m),
        swapped=(*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        readings=(
            words["class.names"],
            words.say("class.dough", m.degree()),
            *(words["class." + what] for what in ("start", "out", "to_say")),
        ),
        benches=tuple(words.say("class.bench", str(n + 1)) for n in range(benches)),
        contains=allergen_line(home.work, m, stated=False),
    )


def _ticks(benches: int, m: Measures) -> tuple[str, ...]:
    spare = spare_for(benches)
    if sets_for(benches) > MOST_TICKS:
        return ()
    return (*(str(n + 1) for n in range(benches)), m.words["class.show"], *(m.words["class.spare"],) * spare)


def _stages(home: HomeWork, sets: int, m: Measures) -> Iterable[ClassStage]:
    for ahead in home.made_ahead:
        for table in weighings(ahead.work).value:
            yield _stage(Bowl(table, ahead.work, m), sets, ahead.work.formula.name)
    for table in weighings(home.work).value:
        stage = table.making.stage.stage
        yield _stage(Bowl(table, home.work, m), sets, stage.name or m.words["kinds." + stage.word])
    made = {fold(ahead.work.formula.name) for ahead in home.made_ahead}
    besides = _besides(home.work, made).items()
    rows = tuple(_row(name, one, sets, Fraction(1) if one % 1 == 0 else Fraction(1, 10), m) for name, one in besides)
    yield ClassStage(m.words["class.besides"], rows)


def _stage(bowl: Bowl, sets: int, title: str) -> ClassStage:
    """Its lines as the handout weighs them; what is a stage itself is in its own lines."""
    lines = [line for line in bowl.table.lines if not line.weighed.portion.stage]
    rows = []
    for line in lines:
        name, one = line_name(line, bowl.table.lines, bowl.m), bowl.weight(line.shown, line.reading.step)
        name = ", ".join((name, *bowl.left_to_the_baker(line)))
        row = _row(name, line.shown, sets, line.reading.step, bowl.m)
        rows.append(row._replace(weight=one.figure, unit=one.unit))
    return ClassStage(title, tuple(rows))


def _besides(work: Work, ahead: Collection[str]) -> dict[str, Fraction]:
    """What one bench gets that is in no bowl: what touches the bread, what is worked into a part of the dough; but for what
    is made ahead and weighed out for itself."""
    formula, found = work.batch.formula, dict[str, Fraction]()

    def add(name: str, grams: Fraction) -> None:
        found[name] = found.get(name, Fraction(0)) + grams

    def touching(steps: Iterable[Step], pieces: Fraction) -> None:
        for step in steps:
            if step.applied is not None and step.applied.stage not in ahead:
                add(step.applied.name, step.applied.grams * (pieces if step.applied.each else 1))

    every = sum((piece.number for piece in work.batch.pieces), Fraction(0))
    for stage in formula.stages:
        touching(stage.steps, every)
    for branch in formula.branches:
        for portion, grams in branch_additions(branch, work.batch):
            if portion.stage not in ahead:
                add(portion.name, grams)
        mine = (piece.number for piece in work.batch.pieces if same_noun(piece.noun, branch.noun))
        touching(branch.steps, sum(mine, Fraction(0)))
    return found


def _row(name: str, grams: Fraction, sets: int, step: Fraction, m: Measures) -> ClassRow:
    one, every = m.weight(grams, step), m.weight(grams * sets, step)
    return ClassRow(name, one.figure, one.unit, every.figure, every.unit)
