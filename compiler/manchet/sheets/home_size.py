"""How much of a formula one domestic oven takes, and the kitchen it is made in."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch
from manchet.batch.order import Order
from manchet.batch.work import Work
from manchet.figures.oven.curve import oven_of as oven_at
from manchet.figures.oven.floor import GAP, across, load_of, places
from manchet.formula.model import Formula, Stage, Step
from manchet.kitchen.model import Floor, Kitchen
from manchet.sheets.drawings.oven import plan
from manchet.sheets.drawings.pen import Drawing, drawing
from manchet.sheets.measures import Measures

TRAY = Floor(Fraction(460), Fraction(330))
"""A domestic baking tray, in mm, as sold for a half sheet (18 x 13 inches)."""

LIES_ROUND = frozenset({"round", "ring", "knot"})
FEWEST, MOST = 1, 24
DOUGH = Fraction(1000)
"""Grams of dough made at home of what is not counted in pieces. Our own rule."""


def fits(grams: Fraction) -> int:
    """How many pieces of this weight lie on the tray."""
    wide = across(grams)
    return len(places(TRAY, wide, wide, GAP, MOST))


def order_at_home(written: Batch) -> Order:
    """What to make instead of the written batch: what fits the tray, never more than was written; of several sorts
    each its part of the tray. In tins, two at most."""
    if not written.pieces or any(not piece.noun for piece in written.pieces):
        return Order(dough=min(DOUGH, written.dough)) if written.dough > 0 else Order()
    sorts = len(written.pieces)
    number = []
    for piece in written.pieces:
        most = 2 if piece.tin else max(FEWEST, fits(piece.grams))
        number.append((min(piece.number, Fraction(max(FEWEST, most // sorts))), piece.noun))
    return Order(pieces=tuple(number))


def seed_at_home(formula: Formula) -> Formula:
    """The same with no more kept for the pot than the next build takes: what a bakery keeps for its pot would outweigh the
    bread of one oven."""
    return formula._replace(stages=tuple(_keeping_enough(stage) for stage in formula.stages))


def _keeping_enough(stage: Stage) -> Stage:
    keeps = tuple(k if k.grams is None else k._replace(grams=None, how="enough") for k in stage.keeps)
    return stage._replace(keeps=keeps)


def kitchen_at_home(kitchen: Kitchen, words: str) -> Kitchen:
    """The same habits (whose spoons, which yeast) and places, but no mixer, and no scale of the bakery: whole grams, tenths up to 20 g, and spoons for who
    has no fine scale."""
    measures = kitchen.measures or ("US" if words == "American" else "metric")
    ovens = () if kitchen.mixers else kitchen.ovens  # who has no mixer is at home already
    return kitchen._replace(mixers=(), ovens=ovens, scales=(), measures=measures)


def floor_plan(bake: Step, work: Work, m: Measures) -> tuple[Drawing, ...]:
    """The measured floor of the oven from above, for two loaves of one sort and more that all lie on it."""
    batch, oven = work.batch, oven_at(bake, work.kitchen)
    if oven is None or oven.floor is None or len(batch.pieces) != 1:
        return ()
    load, number = load_of(work, batch.pieces[0], oven), int(batch.pieces[0].number)
    if load is None or number < 2 or load.number < number:
        return ()
    lie = places(oven.floor, load.piece.wide, load.piece.deep, GAP, number)
    size = m.words.say("handout.tray_size", *(str(int(side) // 10) for side in oven.floor[:2]))
    art = plan(oven.floor, lie, load.piece.wide, load.piece.deep, m.words["drawings.door"], size, oven.door)
    return (drawing("floor", m.words.say("drawings.floor", size, str(number)), art),)


def tray_plan(step: Step, pieces: Sequence[PieceBatch], m: Measures) -> tuple[Drawing, ...]:
    """The tray from above, for small pieces of one sort that lie as they are shaped: three at least, and all of them fit."""
    if step.shape not in LIES_ROUND or len(pieces) != 1 or pieces[0].tin:
        return ()
    wide, number = across(pieces[0].grams), int(pieces[0].number)
    lie = places(TRAY, wide, wide, GAP, number)
    if number < 3 or len(lie) < number:
        return ()
    size = m.words.say("handout.tray_size", "46", "33")
    return (drawing("tray", m.words.say("drawings.tray", size, str(number)), plan(TRAY, lie, wide, wide, "", size)),)
