"""A formula at a size: every weight in exact grams, all of them `Fraction`."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.way_of_piece import UNTOUCHED, Touching
from manchet.formula.model import Formula, Portion, Stage
from manchet.records import NamedTuple


class Weighed(NamedTuple):
    """One line of a stage's weighing, in grams for the whole order (keeps included)."""

    portion: Portion
    grams: Fraction


class StageBatch(NamedTuple):
    """A stage at its size. All figures grams, for all mixes together.

    into = sum of the weighed lines; out = into - losses + top-ups; out = used + kept + returned + left.
    """

    stage: Stage
    weighed: tuple[Weighed, ...]
    into: Fraction
    lost: Fraction
    topped_up: Fraction
    out: Fraction
    used: tuple[tuple[str, Fraction], ...]
    """(key of the stage that uses it, grams)."""
    kept: tuple[tuple[str, Fraction], ...]
    """(name it is kept as, grams)."""
    returned: tuple[tuple[str, Fraction], ...]
    left: Fraction

    @property
    def size(self) -> Fraction:
        """Grams for each gram per gram of all flour that the stage's shares say."""
        return self.into / self.stage.into_share if self.stage.into_share else Fraction(0)


class PieceBatch(NamedTuple):
    """Pieces of one sort: how many, and grams of dough each at the scale."""

    number: Fraction
    noun: str
    grams: Fraction
    baked_grams: Fraction | None
    """What it weighs finished, with all that touches it, by the file's bake loss; None without one."""
    tin: str
    baked_wanted: Fraction | None = None
    """Grams the baked piece is to weigh, where the file gives no bake loss: `grams` is then an estimate."""
    touching: Touching = UNTOUCHED
    """What comes onto one that is no dough."""


class Batch(NamedTuple):
    formula: Formula
    flour: Fraction
    """All flour of the overall formula, in grams."""
    stages: tuple[StageBatch, ...]
    pieces: tuple[PieceBatch, ...]
    dough: Fraction
    """Finished dough, before the dough loss."""
    divided: Fraction
    """What reaches the scale: dough less the dough loss."""

    @property
    def dough_stage(self) -> StageBatch:
        """The stage that is divided; of a preparation, its only one."""
        return self.stages[-1]
