"""Flour for flour, weight for weight, with the water each of the two takes.

How much water a flour takes is a figure of the mill or of the house: the larder has it where an entry says
`takes water 68%`. Without both figures nothing is guessed.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.swaps.exchange import Asking, Asks, Exchange, Rule
from manchet.larder.ingredient import Ingredient


def _between(off: Ingredient, on: Ingredient, asking: Asking) -> Exchange | Asks | None:
    if not off.counts_as_flour or not on.counts_as_flour:
        return None
    lacking = [flour.name for flour in (off, on) if flour.takes_water is None]
    if off.takes_water is None or on.takes_water is None:
        return Asks(
            f"the larder does not say how much water {' and '.join(lacking)} take{'s' if len(lacking) == 1 else ''}",
            f"in your larder, under {lacking[0]}: `takes water 68%`; or leave the swap out, and in the variant write "
            f"both flours and `water …%` under `overall`",
        )
    more = on.takes_water - off.takes_water
    moves = (("water", more),) if more else ()
    said = "water follows the flour" if more else ""
    return Exchange(
        Fraction(1), moves, "weight for weight, water as the larder says of both flours", said, touches=True
    )


def _instead_of(off: Ingredient) -> tuple[str, ...]:
    return ("another flour",) if off.counts_as_flour else ()


RULE = Rule(_between, _instead_of)
