"""What a dish may take of a formula: its pieces, and what one of them weighs when it is finished and cold."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.pieces import PieceWeights
from manchet.batch.way_of_piece import finishing_of, way_of_piece
from manchet.diagnostics.suggest import fold
from manchet.formula.model import CountedAmount, Formula, Makes
from manchet.formula.parts import DishPart

UNKNOWN = Fraction(1)
"""Grams of a piece of which nothing is known: a figure made of it is printed nowhere."""


def parts_of(weights: PieceWeights) -> Iterator[DishPart]:
    """What a sound formula offers to a dish: each thing that it makes by the piece, or itself by weight."""
    formula = weights.formula
    made = tuple(makes for makes in formula.makes if makes.number is not None and makes.noun)
    slices = None if formula.dish else next((step.slices for step in formula.steps if step.slices is not None), None)
    key, is_bread = fold(formula.name), not formula.preparation
    for makes in made:
        name = formula.name if len(made) == 1 else f"{formula.name} {makes.noun}"
        raw = weights.of_one(makes)
        grams = None if raw is None else finished_grams(formula, makes, raw)
        yield DishPart(fold(name), name, key, makes.noun, grams, raw or UNKNOWN, slices, is_bread)
    if not made:
        yield DishPart(key, formula.name, key, "", None, UNKNOWN, is_bread=is_bread)


def unsound_part(name: str, is_bread: bool) -> DishPart:
    """What has mistakes of its own: nothing is known of it but its name."""
    return DishPart(fold(name), name, fold(name), "pieces", None, UNKNOWN, is_bread=is_bread, is_sound=False)


def finished_grams(formula: Formula, makes: Makes, raw: Fraction) -> Fraction | None:
    """Grams of one piece, cooled, of which so much is weighed off; None where nobody has weighed what it loses, or what lies
    on it."""
    if not all(one.known for one in _counted(formula)):
        return None
    if makes.state == "baked" and formula.piece_loss(makes.noun) is None:
        return makes.written
    if not formula.preparation and formula.piece_loss(makes.noun) is None:
        return None
    way = way_of_piece(formula, makes.noun, formula.makes)
    return finishing_of(way).of(raw * (1 - formula.loss_in_its_pot))


def _counted(formula: Formula) -> Iterator[CountedAmount]:
    """What a dish counts in whole pieces or slices."""
    portions = (portion.counted for stage in formula.stages for portion in stage.portions)
    applied = (step.applied.counted for step in formula.steps if step.applied is not None)
    yield from (one for one in (*portions, *applied) if one is not None)
