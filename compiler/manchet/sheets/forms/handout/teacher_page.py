"""The teacher's weigh-out for a class: one set for a bench, and all the sets together."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from fractions import Fraction

from manchet.batch.pieces import branch_additions
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.sheets.forms.handout.made_ahead import line_name
from manchet.sheets.forms.handout.view import ShareRow, TeacherPage
from manchet.sheets.page.measures import Measures

SPARE = 10
"""One set to spare for every so many benches begun. Our own rule."""


def sets_for(benches: int) -> int:
    """How many sets are weighed: one for each bench, one to show with, and the spare ones."""
    return benches + 1 + spare_for(benches)


def spare_for(benches: int) -> int:
    return -(-benches // SPARE)


def teacher_page(work: Work, made: Sequence[Work], benches: int, m: Measures) -> TeacherPage:
    """Every figure is the bench's own, as its scale reads it, so many times over: the sets come out even."""
    sets = sets_for(benches)
    said = m.words.say("handout.sets", str(sets), str(benches), str(spare_for(benches)))
    stages = [_stage(table, sets, m, each.batch.formula.name if each is not work else "")
              for each in (*made, work) for table in weighings(each).value]  # fmt: skip
    ahead = {fold(each.batch.formula.name) for each in made}
    besides = tuple(ShareRow(name, m.grams(one), m.grams(one * sets)) for name, one in _besides(work, ahead))
    if besides:
        stages.append((m.words["handout.besides"], besides))
    return TeacherPage(m.words["handout.for_the_teacher"], said, tuple(stages))


def _besides(work: Work, ahead: Collection[str]) -> list[tuple[str, Fraction]]:
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
    return list(found.items())


def _stage(table: Table, sets: int, m: Measures, made: str) -> tuple[str, tuple[ShareRow, ...]]:
    """`made` is the name of a preparation, whose only stage has none."""
    stage = table.making.stage.stage
    lines = tuple(
        ShareRow(line_name(line, table.lines, m), _weight(line.reading.grams, m), _weight(line.reading.grams * sets, m))
        for line in table.lines
        if not line.weighed.portion.stage
    )
    return made or stage.name or m.words["kinds." + stage.word], lines


def _weight(grams: Fraction, m: Measures) -> str:
    return str(m.weight(grams, Fraction(1) if grams % 1 == 0 else Fraction(1, 10)))
