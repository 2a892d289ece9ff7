"""The teacher's weigh-out for a class: one set for a bench, and all the sets together."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.formula.weighing import Table
from manchet.sheets.handout_values import Bench, Share
from manchet.sheets.measures import Measures
from manchet.sheets.prep_steps import worked_in
from manchet.sheets.prep_view import Prepared

SPARE = 10
"""One set to spare for every so many benches begun. Our own rule."""


def sets_for(benches: int) -> int:
    """How many sets are weighed: one for each bench, one to show with, and the spare ones."""
    return benches + 1 + spare_for(benches)


def spare_for(benches: int) -> int:
    return -(-benches // SPARE)


def bench(work: Prepared, benches: int, m: Measures) -> Bench:
    """Every figure is the bench's own, as its scale reads it, so many times over: the sets come out even."""
    sets = sets_for(benches)
    said = m.words.say("handout.sets", str(sets), str(benches), str(spare_for(benches)))
    stages = [_stage(table, sets, m) for table in work.tables]
    besides = tuple(Share(name, m.grams(one), m.grams(one * sets)) for name, one in _besides(work))
    if besides:
        stages.append((m.words["handout.besides"], besides))
    return Bench(m.words["handout.for_the_teacher"], said, tuple(stages))


def _besides(work: Prepared) -> list[tuple[str, Fraction]]:
    """What one bench gets that is in no bowl: what touches the bread, what is worked into a part of the dough."""
    formula, found = work.batch.formula, dict[str, Fraction]()

    def add(name: str, grams: Fraction) -> None:
        found[name] = found.get(name, Fraction(0)) + grams

    def touching(steps: Iterable[Step], pieces: Fraction) -> None:
        for step in steps:
            if step.applied is not None:
                add(step.applied.name, step.applied.grams * (pieces if step.applied.each else 1))

    every = sum((piece.number for piece in work.batch.pieces), Fraction(0))
    for stage in formula.stages:
        touching(stage.steps, every)
    for branch in formula.branches:
        for portion, grams in worked_in(branch, work.batch):
            add(portion.name, grams)
        mine = (piece.number for piece in work.batch.pieces if same_noun(piece.noun, branch.noun))
        touching(branch.steps, sum(mine, Fraction(0)))
    return list(found.items())


def _stage(table: Table, sets: int, m: Measures) -> tuple[str, tuple[Share, ...]]:
    stage = table.making.stage.stage
    lines = tuple(
        Share(line.weighed.portion.name, _weight(line.reading.grams, m), _weight(line.reading.grams * sets, m))
        for line in table.lines
        if not line.weighed.portion.stage
    )
    return stage.name or m.words["kinds." + stage.word], lines


def _weight(grams: Fraction, m: Measures) -> str:
    return str(m.weight(grams, Fraction(1) if grams % 1 == 0 else Fraction(1, 10)))
