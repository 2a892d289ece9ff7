"""Where a dough has no water to take off or to put more into: its milk, its juice gives and takes it.

Fresh yeast for instant in a dough made with milk brings water, and no line weighs any. So much less milk goes in as holds
that water, and where water is to be made up so much more; water in all stays, nobody weighs a drop of water into a dough of
milk, and the sheet says that it is the milk that changed.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.batch.totals import Holding
from manchet.changes.swaps.exchange import Exchange
from manchet.formula.model import Booking, Formula, OverallLine, Portion, Stage
from manchet.larder.ingredient import Ingredient

NOTHING = Fraction(0)
POURED = ("dairy", "liquid")
MOSTLY = Fraction(4, 5)
"""How much of it is water at the least: milk, buttermilk, juice, beer. Our own rule."""

Fits = Callable[[Portion], bool]


def within_reach(found: Exchange, before: Formula, out: Ingredient, poured: Holding) -> Exchange:
    """The exchange, with its water taken off (or put into) the largest liquid that can, where the water beside it cannot.

    Who takes out a liquid gets water for it, whatever else there is.
    """
    moved = dict(found.moves).get("water", NOTHING)
    if not moved or _takes(before, out, moved, _is_water) or (moved > 0 and out.class_ in POURED):
        return found
    liquid = _liquid(before, out, moved, poured)
    if liquid is None:
        return found
    holds = poured(liquid).water
    moves = tuple((liquid.name, grams / holds) if name == "water" else (name, grams) for name, grams in found.moves)
    said = (
        f"there is not so much water to take off, so there is less {liquid.name}"
        if moved < 0
        else f"made with {liquid.name} and not with water, so there is a little more {liquid.name}"
    )
    return found._replace(moves=moves, said=", ".join(filter(None, (found.said, said))))


def _takes(before: Formula, out: Ingredient, moved: Fraction, fits: Fits) -> bool:
    """Whether the stages that weigh what is swapped out, and for those that cannot the dough, have a line of this, and so
    much in it. `moved`: grams for a gram taken out."""
    of_dough, asked = NOTHING, False
    for stage in before.stages:
        share = _weighed(stage, lambda p: p.ingredient is not None and p.ingredient.name == out.name) * moved
        own = _weighed(stage, fits)
        if not share or (stage is not before.dough and own and own + share >= 0):
            continue
        if share > 0 and stage is not before.dough and _weighed(stage, _is_water):
            return False
        of_dough, asked = of_dough + share, True
    there = _weighed(before.dough, fits)
    return not asked or (there > 0 and there + of_dough >= 0)


def _weighed(stage: Stage, fits: Fits) -> Fraction:
    """Grams of it per gram of all flour that lines of the stage weigh; what is in a culture is none of that."""
    found = (p.share for p in stage.portions if p.booking is Booking.NONE and fits(p))
    return sum(found, NOTHING) * stage.reaching


def _is_water(portion: Portion) -> bool:
    return portion.ingredient is not None and portion.ingredient.class_ == "water"


def _liquid(before: Formula, out: Ingredient, moved: Fraction, poured: Holding) -> Ingredient | None:
    def fits(line: OverallLine) -> bool:
        known = line.ingredient
        if known is None or known.class_ not in POURED or known.name == out.name:
            return False
        holds = poured(known)
        if holds.water < MOSTLY or holds.salt:
            return False
        return _takes(
            before, out, moved / holds.water, lambda p: p.ingredient is not None and p.ingredient.name == known.name
        )

    best = max((line for line in before.overall if fits(line)), key=lambda line: line.share, default=None)
    return None if best is None else best.ingredient
