"""What a dish takes of what other blocks make by the piece: how many slices or pieces, of how many loaves, and what is over."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import ceil

from manchet.batch.model import Batch
from manchet.batch.preparations_needed import touching
from manchet.formula.model import CountedAmount
from manchet.formula.parts import DishPart
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class PartNeeded(NamedTuple):
    """Of one part: grams, and how many slices or whole pieces where all of it is counted so."""

    part: DishPart
    grams: Fraction
    counted: CountedAmount | None
    """None where it is weighed, or here so and there so."""

    @property
    def number(self) -> Fraction | None:
        """Slices, or whole pieces."""
        return None if self.counted is None else self.grams / self.counted.grams

    @property
    def pieces(self) -> int | None:
        """Whole pieces that have to be there: 48 slices of 22 are 3 loaves. None where nobody knows what one weighs."""
        if self.counted is not None:
            return ceil(self.grams / self.counted.grams / self.counted.a_piece)
        return None if not self.part.grams else ceil(self.grams / self.part.grams)

    @property
    def over(self) -> Fraction:
        """Slices that are left of the last piece; 0 of what is taken whole or weighed."""
        if self.counted is None or self.pieces is None:
            return NOTHING
        return self.pieces * self.counted.a_piece - self.grams / self.counted.grams


def parts_needed(batch: Batch) -> tuple[PartNeeded, ...]:
    """In the order in which a dish names them; none of a formula that is no dish."""
    if not batch.formula.dish:
        return ()
    found: dict[str, PartNeeded] = {}
    for key, grams, counted in _taken(batch):
        part = batch.formula.part(key)
        if part is None:
            continue
        there = found.get(key)
        if there is None:
            found[key] = PartNeeded(part, grams, counted)
        else:
            same = there.counted if there.counted == counted else None
            found[key] = there._replace(grams=there.grams + grams, counted=same)
    return tuple(found.values())


def _taken(batch: Batch) -> Iterator[tuple[str, Fraction, CountedAmount | None]]:
    for stage in batch.stages:
        for weighed in stage.weighed:
            yield weighed.portion.stage, weighed.grams, weighed.portion.counted
    for applied, grams in touching(batch):
        yield applied.stage, grams, applied.counted


def is_weighed(batch: Batch) -> bool:
    """Whether what a plate of a dish weighs is known: what every part of it weighs."""
    return all(one.part.grams is not None for one in parts_needed(batch) if one.counted is not None)


def plates_at_once(batch: Batch) -> int | None:
    """How many plates of a dish come out of one round of the last step that takes only so many at a time: 12 slices, two to a
    plate, are 6. None where no step says."""
    last = next((step for step in reversed(batch.formula.dough.steps) if step.at_a_time is not None), None)
    if last is None or last.at_a_time is None:
        return None
    return max(int(last.at_a_time / last.stands_each), 1)
