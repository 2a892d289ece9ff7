"""A formula at a size: every weight in exact grams, what is kept and returned mixed on top."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch, StageBatch, Weighed
from manchet.batch.pieces import PieceWeights
from manchet.batch.toppings import resize_toppings
from manchet.batch.way_of_piece import finishing_of, touching_of, way_of_piece
from manchet.formula.model import Formula, Makes, Stage
from manchet.kitchen.model import Kitchen

NOTHING = Fraction(0)
ONE = Fraction(1)


def batch_of(formula: Formula, flour: Fraction, kitchen: Kitchen, makes: tuple[Makes, ...] | None = None) -> Batch:
    """Weigh a formula out for so many grams of all flour.

    A stage that keeps some is mixed larger by just that much, all its lines in proportion, and so are the stages
    that go into it; the dough still gets its full share. `makes` replaces the head's lines (an order for other
    pieces).
    """
    wanted = formula.makes if makes is None else makes
    weights = PieceWeights(formula, kitchen)
    formula = resize_toppings(formula, flour, wanted, weights.written_flour().value)
    larger = _sizes(formula, flour)
    stages = tuple(_stage(stage, formula, flour, larger, wanted) for stage in formula.stages)
    dough = formula.dough_share * flour
    pieces = tuple(p for p in (_pieces(m, weights, formula, wanted) for m in wanted) if p is not None)
    return Batch(formula, flour, stages, pieces, dough, dough * (1 - formula.dough_loss))


def _sizes(formula: Formula, flour: Fraction) -> dict[str, Fraction]:
    """By what factor each stage is mixed larger than the bread alone would need."""
    larger: dict[str, Fraction] = {}
    for stage in reversed(formula.stages):
        used = scaled = NOTHING
        for user in formula.stages:
            for portion in user.portions:
                if portion.stage == stage.key:
                    used += portion.share
                    scaled += portion.share * larger[user.key]
        made = stage.out_share * flour
        kept = sum((grams for _, grams in _kept(stage, formula, flour)), NOTHING)
        if not made:
            larger[stage.key] = ONE
            continue
        if stage is formula.dough:
            used = scaled = stage.out_share
        left = stage.out_share - used
        larger[stage.key] = ((scaled + left) * flour + kept) / made
    return larger


def _laid(stage: Stage, formula: Formula, makes: tuple[Makes, ...]) -> Iterator[tuple[str, Fraction]]:
    """What of a stage of a dish is laid on by steps: by which stage, and grams of it."""
    plates = sum((made.number for made in makes if made.number is not None), NOTHING) if formula.dish else NOTHING
    for user in formula.stages if plates else ():
        for step in user.steps:
            if step.applied is not None and step.applied.stage == stage.key:
                yield user.key, step.applied.grams * (plates if step.applied.each else ONE)


def _stage(
    stage: Stage, formula: Formula, flour: Fraction, larger: dict[str, Fraction], makes: tuple[Makes, ...]
) -> StageBatch:
    size = flour * larger[stage.key]
    weighed = tuple(Weighed(portion, portion.share * size) for portion in stage.portions)
    used = tuple(
        (user.key, portion.share * flour * larger[user.key])
        for user in formula.stages
        for portion in user.portions
        if portion.stage == stage.key
    )
    used += tuple(_laid(stage, formula, makes))
    out = stage.out_share * size
    kept = _kept(stage, formula, flour)
    gone = sum((g for _, g in used), NOTHING) + sum((g for _, g in kept), NOTHING)
    if stage is formula.dough:
        gone = out
    return StageBatch(
        stage=stage,
        weighed=weighed,
        into=stage.into_share * size,
        lost=stage.lost_share * size,
        topped_up=stage.topped_up_share * size,
        out=out,
        used=used,
        kept=kept,
        returned=tuple((name, share * size) for name, share in _returned_names(stage)),
        left=out - gone,
    )


def _kept(stage: Stage, formula: Formula, flour: Fraction) -> tuple[tuple[str, Fraction], ...]:
    """What a stage keeps: (name, grams). `keep enough` is as much as the stage, mixed that much larger, takes of it:
    with t taken for the bread alone of m made, k = t m / (m - t)."""
    kept = []
    for keep in stage.keeps:
        grams = keep.grams
        if keep.how == "enough":
            taken, made = _taken(stage, keep.key, formula), stage.out_share
            grams = taken * made / (made - taken) * flour if taken < made else NOTHING
        if grams is not None:
            kept.append((keep.name, grams))
    return tuple(kept)


def _taken(stage: Stage, culture: str, formula: Formula) -> Fraction:
    """The share of a culture that comes into a stage, directly and through the stages used in it."""
    taken = NOTHING
    for portion in stage.portions:
        used = formula.stage(portion.stage)
        if used is not None and used.out_share:
            taken += _taken(used, culture, formula) * portion.share / used.out_share
        elif portion.key == culture:
            taken += portion.share
    return taken


def _returned_names(stage: Stage) -> list[tuple[str, Fraction]]:
    names = [goes.name for step in stage.steps if step.verb == "return" for goes in step.goes]
    return [(name, stage.returned_share / len(names)) for name in names]


def _pieces(makes: Makes, weights: PieceWeights, formula: Formula, wanted: tuple[Makes, ...]) -> PieceBatch | None:
    """Pieces of one sort; `formula` is that of this size, with what touches them in proportion."""
    if makes.number is None:
        return None
    grams = weights.of_one(makes)
    if grams is None:
        return None
    way = way_of_piece(formula, makes.noun, wanted)
    known = formula.preparation or formula.piece_loss(makes.noun) is not None
    baked = finishing_of(way).of(grams * (1 - formula.loss_in_its_pot)) if known else None
    awaited = makes.written if makes.state == "baked" and baked is None else None
    return PieceBatch(makes.number, makes.noun, grams, baked, makes.tin, awaited, touching_of(way))
