"""Where today's amount is far from the one a file was written for: its minutes, losses and heats were another size's.

Thresholds are our own rules: a piece a quarter heavier or lighter bakes and proves otherwise; a dough or a pot three
times as large (or a third) keeps its warmth, and boils away, otherwise; under 60 g of a cooked stage dries out (from memory).
"""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import StageBatch
from manchet.batch.pieces import PieceWeights
from manchet.batch.work import Work, once
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BAKES, IN_POT, PROVES

PIECE = Fraction(1, 4)
MASS = Fraction(3)
SMALL = Fraction(60)


class Far(NamedTuple):
    """Grams as the file was written for, and as they are today."""

    written: Fraction
    wanted: Fraction


class FarStep(NamedTuple):
    """What of a step was written for another size: "bake", "prove", "dough" (its bulk) or "pot"."""

    what: str
    far: Far


def step_far_from_written(work: Work, verb: str, stage: StageBatch | None, noun: str) -> FarStep | None:
    """The bake and the proof of a piece of another weight, the fermentation or the pot of another mass.

    `stage` is None in the way of one sort of piece, whose `noun` is given.
    """
    far: Far | None = None
    what = ""
    if verb in BAKES or verb in PROVES:
        what, far = "bake" if verb in BAKES else "prove", piece_far_from_written(work, noun)
    elif stage is not None and (verb == "ferment" or verb in IN_POT):
        what, far = "dough" if verb == "ferment" else "pot", mass_far_from_written(work, stage)
    return None if far is None else FarStep(what, far)


@once
def piece_far_from_written(work: Work, noun: str) -> Far | None:
    """The piece of that noun (any, if ""), where it is more than a quarter heavier or lighter than the file's."""
    weights = PieceWeights(work.formula, work.kitchen)
    pieces = [piece for piece in work.batch.pieces if not noun or same_noun(noun, piece.noun)]
    for makes in work.formula.makes:
        mine = [piece for piece in pieces if same_noun(piece.noun, makes.noun)]
        written = weights.of_one(makes) if mine else None
        for piece in mine:
            if written is not None and abs(piece.grams - written) > written * PIECE:
                return Far(written, piece.grams)
    return None


@once
def mass_far_from_written(work: Work, stage: StageBatch) -> Far | None:
    """A stage's whole lot, where it is more than three times the file's, or less than a third of it."""
    flour = PieceWeights(work.formula, work.kitchen).written_flour().value
    if flour is None:
        return None
    written = stage.stage.into_share * flour
    if written and not written / MASS <= stage.into <= written * MASS:
        return Far(written, stage.into)
    return None


def too_small_to_cook(stage: StageBatch) -> bool:
    cooked = stage.stage.word == "scald" or any(step.verb in IN_POT for step in stage.stage.steps)
    return cooked and stage.into < SMALL
