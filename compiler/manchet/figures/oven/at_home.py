"""How much of a formula one domestic oven takes, and the kitchen it is made in."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch
from manchet.batch.order import Order
from manchet.figures.oven.floor import GAP, across, places
from manchet.formula.model import Formula, Stage
from manchet.kitchen.model import Floor, Kitchen

TRAY = Floor(Fraction(460), Fraction(330))
"""A domestic baking tray, in mm, as sold for a half sheet (18 x 13 inches)."""

FEWEST, MOST = 1, 24
DOUGH = Fraction(1000)
"""Grams of dough made at home of what is not counted in pieces. Our own rule."""


def fits(grams: Fraction) -> int:
    """How many pieces of this weight lie on the tray."""
    wide = across(grams)
    return len(places(TRAY, wide, wide, GAP, MOST))


def at_once_at_home(piece: PieceBatch) -> int:
    """How many of a sort go into the oven at once, if nothing else does: what fits the tray, or two tins."""
    return 2 if piece.tin else max(FEWEST, fits(piece.grams))


def order_at_home(written: Batch) -> Order:
    """What to make instead of the written batch: what fits the tray, never more than was written; of several sorts
    each its part of the tray. In tins, two at most."""
    if not written.pieces or any(not piece.noun for piece in written.pieces):
        return Order(dough=min(DOUGH, written.dough)) if written.dough > 0 else Order()
    sorts = len(written.pieces)
    number = []
    for piece in written.pieces:
        number.append((min(piece.number, Fraction(max(FEWEST, at_once_at_home(piece) // sorts))), piece.noun))
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
