"""How much of a preparation is made for what needs it: a bath fills its vessel, however little of it the bread takes up."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction

from manchet.batch.model import Batch
from manchet.formula.model import Formula
from manchet.records import NamedTuple

USUAL = Fraction(1000)
"""Grams of the least bath where the file does not say: a litre stands 3 cm deep in a vessel of 20 cm, enough to dip a roll
into. Our own rule."""

WET = frozenset({"water", "liquid", "dairy"})


class Because(Enum):
    """What decides how much is made."""

    WANTED = "what is wanted"
    WRITTEN = "what the file makes, which is a kettle of it"
    FILE = "what the file says its vessel needs"
    USUAL = "the usual least of a bath"


class Made(NamedTuple):
    """Grams that are made, and why so many."""

    grams: Fraction
    because: Because = Because.WANTED


def dipped_into(batch: Batch) -> frozenset[str]:
    """Keys of what pieces are dipped into, or boiled in."""
    steps = batch.formula.steps
    dipped = {step.applied.stage for step in steps if step.verb == "dip" and step.applied is not None}
    return frozenset(dipped | boiled_in(batch))


def boiled_in(batch: Batch) -> frozenset[str]:
    """Keys of what pieces are boiled in (`boil in malt bath`), so that nobody knows what they take up."""
    return frozenset(step.bath for step in batch.formula.steps if step.bath)


def is_liquid(preparation: Formula) -> bool:
    """Half of it at least is a liquid: pieces are dipped into seeds too."""
    portions = [portion for stage in preparation.stages for portion in stage.portions]
    wet = (p.share for p in portions if p.ingredient is not None and p.ingredient.class_ in WET)
    return sum(wet, Fraction(0)) * 2 >= sum((p.share for p in portions), Fraction(0))


def amount_of(preparation: Formula, wanted: Fraction, dipped: bool, kettle: Fraction = Fraction(0)) -> Made:
    """So much is made for what is wanted of it in all; `dipped`: pieces are dipped into it. `kettle`: grams that the file
    makes of a bath that they are boiled in, which has to hold them swimming."""
    if preparation.never_under is not None:
        least = Made(preparation.never_under, Because.FILE)
    elif kettle:
        least = Made(kettle, Because.WRITTEN)
    else:
        least = Made(USUAL if dipped and is_liquid(preparation) else Fraction(0), Because.USUAL)
    return least if least.grams > wanted else Made(wanted)
