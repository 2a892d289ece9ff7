"""What is done otherwise in a stage: steps that changed, moved, went or came. A line for each, whatever changed in it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from manchet.comparison.alignment import pairs_either_way
from manchet.comparison.facets import called_anew, facets_apart, key_of, rank_of_step
from manchet.comparison.values import Rank, StepChange, StepMoved
from manchet.formula.model import Step
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import KEEPS, VERB

NEAR = 2
"""So many steps apart a verb may stand and still be the same step, changed. Our own rule."""
SAME_STEP, SAME_KEY = 6, 4
"""What it weighs that two steps stand beside each other. What is added or taken out weighs one less: where one of two must have moved, it
is what is added, and not the mixing."""


class KeyedStep(NamedTuple):
    """A step as the file has it, and as it is compared: under the newer names."""

    written: Step
    step: Step


def step_changes(
    stage: str, before: Sequence[Step], after: Sequence[Step], names: Mapping[str, str], without: frozenset[str]
) -> Iterator[StepChange | StepMoved]:
    """In the order of the newer steps; what is gone stands where it was. `names`: newer keys by older ones; `without`: the keys of
    materials and stages of which is told already that they are gone or new."""
    old, new = _keyed(before, names, without), _keyed(after, {}, without)
    pairs = dict(pairs_either_way(old, new, _weight, lambda one: repr(key_of(one.step))))
    moved = dict(_moved(old, new, pairs))
    changed = dict(_changed(old, new, pairs | moved, pairs))
    of_new = {j: i for i, j in (pairs | moved | changed).items()}
    gone = [i for i in range(len(old)) if i not in pairs and i not in moved and i not in changed]
    for j, one in enumerate(new):
        at = of_new.get(j)
        if at is None:
            yield StepChange(stage, None, one.written, (), Rank.STEPS)
            continue
        while gone and gone[0] < at and at in pairs:
            yield StepChange(stage, old[gone.pop(0)].written, None, (), Rank.STEPS)
        facets = facets_apart(old[at].step, one.step)
        if at in moved:
            rank = min(Rank.STEPS, rank_of_step(old[at].step, one.step, facets)) if facets else Rank.STEPS
            yield StepMoved(stage, old[at].written, one.written, new[j - 1].written if j else None, facets, rank)
        elif facets:
            yield StepChange(stage, old[at].written, one.written, facets, rank_of_step(old[at].step, one.step, facets))
    yield from (StepChange(stage, old[at].written, None, (), Rank.STEPS) for at in gone)


def _keyed(steps: Sequence[Step], names: Mapping[str, str], without: frozenset[str]) -> list[KeyedStep]:
    """Without those that say how much is kept: that is told by itself."""
    found = ((step, called_anew(step, names, without)) for step in steps if step.verb not in KEEPS)
    return [KeyedStep(written, step) for written, step in found if step is not None]


def _weight(one: KeyedStep, other: KeyedStep) -> int:
    if key_of(one.step) != key_of(other.step):
        return 0
    same = SAME_KEY if facets_apart(one.step, other.step) else SAME_STEP
    return same - VERB[one.step.verb].moves


def _moved(old: Sequence[KeyedStep], new: Sequence[KeyedStep], pairs: Mapping[int, int]) -> Iterator[tuple[int, int]]:
    """What is left over on both sides under the same key."""
    left = [j for j in range(len(new)) if j not in set(pairs.values())]
    for i, one in enumerate(old):
        if i in pairs:
            continue
        found = next((j for j in left if key_of(new[j].step) == key_of(one.step)), None)
        if found is not None:
            left.remove(found)
            yield i, found


def _changed(
    old: Sequence[KeyedStep], new: Sequence[KeyedStep], taken: Mapping[int, int], anchors: Mapping[int, int]
) -> Iterator[tuple[int, int]]:
    """The same verb, near the same place among the steps that stand beside each other: the nearest first."""
    free_old = {i for i in range(len(old)) if i not in taken}
    free_new = {j for j in range(len(new)) if j not in set(taken.values())}
    apart = sorted(
        (distance, i + j, i, j)
        for i in free_old
        for j in free_new
        if old[i].step.verb == new[j].step.verb and (distance := _steps_apart(i, j, anchors)) <= NEAR
    )
    for _, _, i, j in apart:
        if i in free_old and j in free_new:
            free_old.remove(i)
            free_new.remove(j)
            yield i, j


def _steps_apart(i: int, j: int, anchors: Mapping[int, int]) -> int:
    """How many of the steps that stand beside each other lie between."""
    return abs(sum(1 for a in anchors if a < i) - sum(1 for b in anchors.values() if b < j))
