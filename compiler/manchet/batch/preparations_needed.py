"""How much of each preparation a batch needs, and of what else touches the bread."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.pieces import branch_additions
from manchet.formula.model import Applied, Step
from manchet.formula.nouns import same_noun


def preparations_needed(batch: Batch) -> dict[str, Fraction]:
    """Grams of each preparation, by key, that touches the bread or goes into it; 0 of one that pieces are boiled in."""
    found: dict[str, Fraction] = {}
    formula, own = batch.formula, {stage.key for stage in batch.formula.stages}

    def add(key: str, grams: Fraction) -> None:
        if key and key not in own and grams:
            found[key] = found.get(key, Fraction(0)) + grams

    for stage in batch.stages:
        for weighed in stage.weighed:
            add(weighed.portion.stage, weighed.grams)
    for branch in formula.branches:
        for portion, grams in branch_additions(branch, batch):
            add(portion.stage, grams)
    for applied, grams in touching(batch):
        add(applied.stage, grams)
    for step in formula.steps:
        if step.bath:
            found.setdefault(step.bath, Fraction(0))
    return found


def touching(batch: Batch) -> Iterator[tuple[Applied, Fraction]]:
    """All that is filled in, spread, brushed, dusted, dipped into or greased with, and grams of it in all, step by step."""
    everyone = sum((piece.number for piece in batch.pieces), Fraction(0))
    for stage in batch.stages:
        yield from _by_steps(stage.stage.steps, everyone)
    for branch in batch.formula.branches:
        mine = (piece.number for piece in batch.pieces if same_noun(piece.noun, branch.noun))
        yield from _by_steps(branch.steps, sum(mine, Fraction(0)))


def _by_steps(steps: tuple[Step, ...], pieces: Fraction) -> Iterator[tuple[Applied, Fraction]]:
    for step in steps:
        if step.applied is not None:
            yield step.applied, step.applied.grams * (pieces if step.applied.each else 1)


def weighed_beside(batch: Batch) -> dict[str, Fraction]:
    """Grams of each ingredient that touches the bread and is no preparation, by its name in the file."""
    found: dict[str, Fraction] = {}
    for applied, grams in touching(batch):
        if not applied.stage and grams:
            found[applied.name] = found.get(applied.name, Fraction(0)) + grams
    return found
