"""Yeasts for one another: fresh, active dry, instant, and the strains for sweet doughs.

What a dried yeast lacks of the fresh yeast's weight is made up with water, so the dough weighs what it did. With 0.33
that is 0.67 of the fresh yeast's weight; a page that prints 0.77 does not balance.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.changes.swaps.exchange import Asking, Exchange, SwapRule
from manchet.larder.ingredient import Ingredient
from manchet.larder.yeast_factors import Factors

SAME_STRAIN = "as much of a yeast for sweet doughs as of the ordinary; common practice"
FRESH, FRESH_SWEET, SWEET = "fresh yeast", "fresh sweet-dough yeast", "sweet-dough yeast"
YEASTS = (FRESH, "active dry yeast", "instant yeast", SWEET, FRESH_SWEET)


def _worth(yeast: Ingredient, factors: Factors) -> Fraction | None:
    """Grams of it for 1 g of fresh yeast; None for a yeast that no source speaks of."""
    return {
        FRESH: Fraction(1),
        FRESH_SWEET: Fraction(1),
        "active dry yeast": factors.active_dry,
        "instant yeast": factors.instant,
        SWEET: factors.instant,
    }.get(yeast.name)


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | None:
    factors = asking.factors
    was, comes = _worth(off, factors), _worth(on, factors)
    if was is None or comes is None:
        return None
    factor = comes / was
    moves = (("water", 1 - factor),) if factor != 1 else ()
    strains = off.class_ != on.class_
    if factor == 1:
        return Exchange(factor, moves, SAME_STRAIN)
    return Exchange(factor, moves, f"{factors.source}; {SAME_STRAIN}" if strains else factors.source)


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return tuple(name for name in YEASTS if name != off.name) if off.name in YEASTS else ()


RULE = SwapRule(_between, _instead_of)
