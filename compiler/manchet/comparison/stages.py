"""Which stage of the one formula is which of the other: by its name, or by what is in it and what is done with it.

Where a stage stands in its file never counts.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.comparison.alignment import pairs_in_order
from manchet.formula.model import Stage
from manchet.records import NamedTuple

MATERIALS, VERBS, SORT = Fraction(60, 100), Fraction(25, 100), Fraction(15, 100)
"""How much of a likeness is shared material by weight, verbs in order, the same sort of stage. Our own, as `ENOUGH` is."""
ENOUGH = Fraction(1, 2)


class StagePairs(NamedTuple):
    """`same` in the order of the newer formula."""

    same: tuple[tuple[Stage, Stage], ...]
    gone: tuple[Stage, ...]
    new: tuple[Stage, ...]

    @property
    def now_called(self) -> Mapping[str, str]:
        """The keys of the newer formula by those of the older, where they differ."""
        return {old.key: new.key for old, new in self.same if old.key != new.key}


def paired_stages(before: Work, after: Work) -> StagePairs:
    """By key; then the most alike first, as long as two are alike enough. The last stage of each is one and the same: its dough."""
    old, new = list(before.formula.stages[:-1]), list(after.formula.stages[:-1])
    there = {stage.key: stage for stage in old}
    pairs = [(there[stage.key], stage) for stage in new if stage.key in there]
    known = {stage.key for _, stage in pairs}
    old = [stage for stage in old if stage.key not in known]
    new = [stage for stage in new if stage.key not in known]
    while old and new:
        # At the same likeness by their names, taken together: so no side is the first.
        likest = max(
            ((likeness(a, b), sorted((a.key, b.key)), a, b) for a in old for b in new), key=lambda one: one[:2]
        )
        if likest[0] < ENOUGH:
            break
        pairs.append((likest[2], likest[3]))
        old.remove(likest[2])
        new.remove(likest[3])
    places = {stage.key: at for at, stage in enumerate(after.formula.stages)}
    pairs.append((before.formula.dough, after.formula.dough))
    pairs.sort(key=lambda pair: places[pair[1].key])
    return StagePairs(tuple(pairs), tuple(old), tuple(new))


def likeness(one: Stage, other: Stage) -> Fraction:
    """From 0 to 1."""
    return (
        MATERIALS * _shared(one, other)
        + VERBS * _in_order(_verbs(one), _verbs(other))
        + SORT * (one.word == other.word)
    )


def _shared(one: Stage, other: Stage) -> Fraction:
    """The part of their materials that both have, by weight."""
    a, b = _parts(one), _parts(other)
    return sum((min(share, b[key]) for key, share in a.items() if key in b), Fraction(0))


def _parts(stage: Stage) -> dict[str, Fraction]:
    found: dict[str, Fraction] = {}
    whole = sum((portion.share for portion in stage.portions), Fraction(0))
    for portion in stage.portions if whole else ():
        found[portion.key] = found.get(portion.key, Fraction(0)) + portion.share / whole
    return found


def _verbs(stage: Stage) -> list[str]:
    return [step.verb for step in stage.steps]


def _in_order(one: Sequence[str], other: Sequence[str]) -> Fraction:
    if not one and not other:
        return Fraction(1)
    same = pairs_in_order(one, other, lambda a, b: int(a == b))
    return Fraction(2 * len(same), len(one) + len(other))
