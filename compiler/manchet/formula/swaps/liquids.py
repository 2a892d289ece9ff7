"""Where a formula has no water to take off: its milk, its juice gives it.

Fresh yeast for instant in a dough made with milk brings water, and no line weighs any. So much less milk goes in as holds
that water; water in all stays, and the sheet says that the milk became less.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.model import Formula, OverallLine
from manchet.formula.swaps.exchange import Exchange
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient

NOTHING = Fraction(0)
POURED = ("dairy", "liquid")
MOSTLY = Fraction(4, 5)
"""How much of it is water at the least: milk, buttermilk, juice, beer. Our own rule."""


def within_reach(found: Exchange, before: Formula, out: Ingredient, share: Fraction, larder: Larder) -> Exchange:
    """The exchange, with water that is to come off but is not there taken off the largest liquid that holds so much."""
    taken = -dict(found.moves).get("water", NOTHING) * share
    if taken <= _water(before):
        return found
    liquid = _liquid(before, out, taken, larder)
    if liquid is None:
        return found
    holds = larder.poured(liquid).water
    moves = tuple((liquid.name, grams / holds) if name == "water" else (name, grams) for name, grams in found.moves)
    said = f"there is not so much water to take off, so there is less {liquid.name}"
    return found._replace(moves=moves, said=", ".join(filter(None, (found.said, said))))


def _water(before: Formula) -> Fraction:
    return sum(
        (o.share for o in before.overall if o.ingredient is not None and o.ingredient.class_ == "water"), NOTHING
    )


def _liquid(before: Formula, out: Ingredient, taken: Fraction, larder: Larder) -> Ingredient | None:
    def fits(line: OverallLine) -> bool:
        known = line.ingredient
        if known is None or known.class_ not in POURED or known.name == out.name:
            return False
        poured = larder.poured(known)
        return poured.water >= MOSTLY and not poured.salt and line.share * poured.water >= taken

    best = max((line for line in before.overall if fits(line)), key=lambda line: line.share, default=None)
    return None if best is None else best.ingredient
