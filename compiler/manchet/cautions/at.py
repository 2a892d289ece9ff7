"""Where a caution stands: at the step that causes it, so that it can be printed directly above that step."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.formula.model import Formula, Stage, Step
from manchet.records import NamedTuple


class CautionPlace(NamedTuple):
    """A step of a formula, or a stage of it as a whole."""

    stage: str = ""
    """Key of the stage, "" for the house."""
    step: int | None = None
    """Which of the stage's steps, or of the branch's, counted from 0; None for the stage as a whole: what is weighed. One past the
    last step of a preparation is where it is kept: its `good for`."""
    branch: int | None = None
    """Which of `Formula.branches`, counted from 0, where the step is one of a branch's; its stage is then the dough."""


class Done(NamedTuple):
    """A step, and where it stands."""

    at: CautionPlace
    step: Step


def done_in(stage: Stage, formula: Formula) -> tuple[Done, ...]:
    """The steps of a stage; of the dough, those of all that it is divided into too."""
    own = tuple(Done(CautionPlace(stage.key, n), step) for n, step in enumerate(stage.steps))
    if stage is not formula.dough:
        return own
    return own + tuple(done for number in range(len(formula.branches)) for done in _of_branch(formula, number))


def ways_done(formula: Formula) -> Iterator[tuple[Done, ...]]:
    """What is done to each bread, from the first mix of its dough to the end, as `Formula.ways` has it."""
    own = tuple(Done(CautionPlace(formula.dough.key, n), step) for n, step in enumerate(formula.dough.steps))
    parted = [number for number, branch in enumerate(formula.branches) if branch.noun]
    for number in parted:
        yield own + _of_branch(formula, number)
    if not parted:
        yield own


def where_kept(formula: Formula) -> CautionPlace:
    """The `good for` of a preparation; its last step where the file has none, the whole of it where it has no steps."""
    steps = len(formula.dough.steps)
    if formula.good_for is not None:
        return CautionPlace(formula.dough.key, steps)
    return CautionPlace(formula.dough.key, steps - 1 if steps else None)


def _of_branch(formula: Formula, number: int) -> tuple[Done, ...]:
    key, steps = formula.dough.key, formula.branches[number].steps
    return tuple(Done(CautionPlace(key, n, number), step) for n, step in enumerate(steps))
