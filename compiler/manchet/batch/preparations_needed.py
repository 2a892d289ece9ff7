"""How much of each preparation a batch needs."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.pieces import branch_additions
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun


def preparations_needed(batch: Batch) -> dict[str, Fraction]:
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
        for portion, grams in branch_additions(branch, batch):
            add(portion.stage, grams)
        mine = (piece.number for piece in batch.pieces if same_noun(piece.noun, branch.noun))
        touching(branch.steps, sum(mine, Fraction(0)))
    return found
