"""What is made ahead for a bread, in short: so much of it, of what, and what is done. The student has not its sheet."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.pieces import worked_in
from manchet.batch.weighed_table import WeighedLine
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.sheets import prep_steps
from manchet.sheets.handout_values import Before
from manchet.sheets.measures import Measures
from manchet.sheets.weigh_view import Bowl


def needed(batch: Batch) -> dict[str, Fraction]:
    """Grams of each preparation, by key, that touches the bread or goes into it."""
    found: dict[str, Fraction] = {}
    formula, own = batch.formula, {stage.key for stage in batch.formula.stages}

    def add(key: str, grams: Fraction) -> None:
        if key and key not in own and grams:
            found[key] = found.get(key, Fraction(0)) + grams

    def touching(steps: tuple[Step, ...], pieces: Fraction) -> None:
        for step in steps:
            if step.applied is not None:
                add(step.applied.stage, step.applied.grams * (pieces if step.applied.each else 1))

    for stage in batch.stages:
        for weighed in stage.weighed:
            add(weighed.portion.stage, weighed.grams)
        touching(stage.stage.steps, sum((piece.number for piece in batch.pieces), Fraction(0)))
    for branch in formula.branches:
        for portion, grams in worked_in(branch, batch):
            add(portion.stage, grams)
        mine = (piece.number for piece in batch.pieces if same_noun(piece.noun, branch.noun))
        touching(branch.steps, sum(mine, Fraction(0)))
    return found


def before(work: Work, m: Measures) -> Before:
    """One preparation: `egg wash 24 g`, `eggs 20 g, milk 4 g`, `whisk 2 min; strain`."""
    rows, steps = [], []
    for table in weighings(work).value:
        bowl = Bowl(table, work, m)
        rows += [f"{name_of(line, table.lines, m)} {m.grams(line.shown)}" for line in table.lines]
        steps += [_said(step, bowl, m) for step in table.making.stage.stage.steps]
    name = f"{work.batch.formula.name} {m.with_ounces(work.batch.dough)}"
    return Before(name, ", ".join(rows), "; ".join(step for step in steps if step))


def name_of(line: WeighedLine, lines: tuple[WeighedLine, ...], m: Measures) -> str:
    """Its name; of two lines of one thing the one that is held back says so."""
    portion = line.weighed.portion
    twice = any(other is not line and other.weighed.portion.key == portion.key for other in lines)
    return m.words.say("handout.held_back", portion.name) if twice and portion.held else portion.name


def _said(step: Step, bowl: Bowl, m: Measures) -> str:
    line = prep_steps.line_of(step, bowl, (), m)
    adds = ", ".join(row.name for row in line.adds)
    said = " ".join(part for part in (line.text, adds, line.look) if part)
    return said[:1].lower() + said[1:]
