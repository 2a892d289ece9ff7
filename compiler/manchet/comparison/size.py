"""How much is made, and the older formula at the size of the newer: a changed size is told once, and moves nothing else."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work, work_of
from manchet.comparison.pieces import paired_pieces
from manchet.comparison.values import FlourChange, LossChange, MadePieces, MakesChange
from manchet.formula.model import Formula, Way


def size_changes(before: Work, after: Work) -> Iterator[MakesChange | FlourChange | LossChange]:
    """Pieces, then what the head says is lost."""
    pairs = paired_pieces(tuple(_made(before)), tuple(_made(after)))
    changes = [MakesChange(a, b) for a, b in pairs if a != b]
    yield from changes
    by_weight = before.formula.way is after.formula.way is Way.BY_WEIGHT and not after.formula.dish
    if by_weight and not changes and before.batch.flour != after.batch.flour:
        yield FlourChange(before.batch.flour, after.batch.flour)
    for what, a, b in (
        ("dough loss", before.formula.dough_loss, after.formula.dough_loss),
        ("bake loss", before.formula.bake_loss, after.formula.bake_loss),
    ):
        if a != b:
            yield LossChange(what, a, b)


def _made(work: Work) -> Iterator[MadePieces]:
    for piece in work.batch.pieces:
        # What a plate weighs follows from what is on it.
        grams = Fraction(0) if work.formula.dish else piece.grams
        yield MadePieces(piece.number, piece.noun, grams, piece.tin)
    if not work.batch.pieces:
        yield MadePieces(Fraction(1), "", work.batch.dough)


def at_the_size_of(before: Work, after: Work) -> Work:
    """The older formula making what the newer makes; as it is written where it can't."""
    old, new = before.formula, after.formula
    sized = old._replace(makes=new.makes, from_flour=new.from_flour)
    if old.way is Way.BY_WEIGHT and old.own_flour is not None:
        sized = sized._replace(own_flour=_same_dough(old, before, after))
    made = work_of(sized, after.order, before.kitchen, before.larder, before.preparations).value
    return before if made is None else made


def _same_dough(old: Formula, before: Work, after: Work) -> Fraction:
    """Grams of flour that a file by weight would weigh for the dough of the other side; of a dish, of all that is laid down for its plates."""
    if old.dish:
        plates = [sum((piece.number for piece in work.batch.pieces), Fraction(0)) for work in (before, after)]
        return before.batch.flour * plates[1] / plates[0] if plates[0] else before.batch.flour
    if not before.batch.dough or not old.dough_share:
        return before.batch.flour
    return after.batch.dough / old.dough_share
