"""Flour for flour, weight for weight, with the water each of the two takes.

How much water a flour takes is a figure of the mill or of the house: `absorbs water 68%` in the larder. The built-in larder
has estimates of the common flours, between two figures; a swap by one of them says so. Without any nothing is guessed.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.changes.swaps.exchange import Asking, Asks, Exchange, SwapRule
from manchet.larder.ingredient import Ingredient, Takes
from manchet.quantities.printing import decimal

WATER_OF = "; absorbs water: "
"""In the source of a built-in flour: what follows is whose the figure of its water is."""
HOUSE = "the larder's own"


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | Asks | None:
    if not off.counts_as_flour or not on.counts_as_flour:
        return None
    lacking = [flour.name for flour in (off, on) if flour.takes_water is None]
    if off.takes_water is None or on.takes_water is None:
        return Asks(
            f"the larder does not say how much water {' and '.join(lacking)} take{'s' if len(lacking) == 1 else ''}",
            f"in your larder, under {lacking[0]}: `absorbs water 68%`; or leave the swap out, and in the variant write "
            f"both flours and `water …%` under `overall`",
        )
    more = on.takes_water.likely - off.takes_water.likely
    moves = (("water", more),) if more else ()
    source = f"weight for weight; water of {off.name}: {_source(off)}; of {on.name}: {_source(on)}"
    return Exchange(Fraction(1), moves, source, _said(off.takes_water, on.takes_water), touches=True)


def _said(off: Takes, on: Takes) -> str:
    """How far the water may be out: by as much as the less certain of the two figures. Our own rule."""
    more, out = on.likely - off.likely, max(off.high - off.low, on.high - on.low) / 2
    if not out:
        return "water follows the flour" if more else ""
    low, high = (decimal(abs(end) * 100, 1) for end in sorted((more - out, more + out), key=abs))
    span = f"{low} to {high} % of its weight {'more' if more > 0 else 'less'}"
    if more - out < 0 < more + out:
        less, over = decimal((out - more) * 100, 1), decimal((more + out) * 100, 1)
        span = f"from {less} % of its weight less to {over} % more"
    return f"an estimate: {span} water; begin with the least"


def _source(flour: Ingredient) -> str:
    return flour.source.partition(WATER_OF)[2] or HOUSE


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return ("another flour",) if off.counts_as_flour else ()


RULE = SwapRule(_between, _instead_of)
