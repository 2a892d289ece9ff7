"""How high dough stands in a tin or a basket, before it has risen and after. An estimate, in whole millimetres."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from fractions import Fraction
from math import ceil

from manchet.batch.model import PieceBatch
from manchet.diagnostics.suggest import fold
from manchet.figures.fermentation.cooling import DENSITY
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen, Vessel
from manchet.kitchen.tin_volume import tapered_volume
from manchet.records import NamedTuple
from manchet.syntax.things import ONE_PIECE

GRAMS_PER_MILLILITRE = DENSITY / 1000
"""Of dough that has not risen."""
_WORDS = {"tin": "tin", "tins": "tin", "pan": "tin", "pans": "tin", "basket": "basket", "baskets": "basket"}


class Stands(NamedTuple):
    """What a piece stands in at a step: "tin", "basket" or ""; the kitchen's own, where it knows it; grams of dough in
    one, where they are all alike; and which way the seam lies ("up", "down" or "")."""

    word: str = ""
    vessel: Vessel | None = None
    grams: Fraction | None = None
    seam: str = ""


NOWHERE = Stands()


class Level(NamedTuple):
    """Shares of the depth from the floor up, over 1 above the rim; None where it cannot be known.

    Without a `depth` (millimetres) nobody has measured the sides, and a share is of the volume.
    """

    before: Fraction | None
    after: Fraction | None
    depth: Fraction | None

    @property
    def sinks(self) -> bool:
        """Whether it would stand lower after it has risen than before, or under the floor: no dough does."""
        return self.after is not None and (self.after <= 0 or (self.before is not None and self.after < self.before))


def dough_levels(
    steps: Sequence[Step], noun: str, pieces: Sequence[PieceBatch], kitchen: Kitchen
) -> tuple[Stands, ...]:
    """What the pieces of one sort (`noun` "": of all) stand in, at each step of their way."""
    mine = [piece for piece in pieces if not noun or same_noun(piece.noun, noun)]
    weights, tins = {piece.grams for piece in mine}, {piece.tin for piece in mine}
    grams = weights.pop() if len(weights) == 1 else None
    tin = tins.pop() if len(tins) == 1 else ""
    now = _in(tin, kitchen)._replace(grams=grams) if tin else Stands(grams=grams)
    found = []
    for step in steps:
        if step.verb == "place" and step.where is not None:
            seam = next((way.removeprefix("seam ") for way in step.manner if way.startswith("seam ")), "")
            now = _in(step.where[1], kitchen)._replace(grams=grams, seam=seam)
        elif step.verb == "turn out":
            now = Stands(grams=grams)
        found.append(now)
    return tuple(found)


def _in(place: str, kitchen: Kitchen) -> Stands:
    """A place by the kitchen's name for it, or by the last word of its own name."""
    vessel = kitchen.vessel(place)
    vessel = vessel if vessel is not None and vessel.word in ONE_PIECE else None
    last = fold(place).split()[-1:]
    return Stands(vessel.word if vessel else _WORDS.get("".join(last), ""), vessel)


def level_of(stands: Stands, below_rim: Fraction | None = None, times: Fraction | None = None) -> Level:
    """Before it has risen, at 1.1 g/ml (common practice); after it, so many millimetres below the rim, or so many times
    its volume."""
    vessel = stands.vessel
    depth = None if vessel is None or vessel.rim is None else vessel.deep
    share = None
    if vessel is not None and vessel.millilitres and stands.grams is not None:
        share = stands.grams / GRAMS_PER_MILLILITRE / vessel.millilitres
    after = None if share is None or times is None else share * times
    if vessel is None or depth is None:
        return Level(share, after, None)
    before = None if share is None else _height(share, vessel, depth)
    if below_rim is not None:
        return Level(before, 1 - below_rim / depth, depth)
    return Level(before, None if after is None else _height(after, vessel, depth), depth)


def _height(share: Fraction, vessel: Vessel, depth: Fraction) -> Fraction:
    """How high so much of its volume stands, as a share of its depth, to the next whole millimetre."""
    assert vessel.rim is not None
    rim, floor = vessel.rim, vessel.base or vessel.rim

    def volume(height: Fraction) -> Fraction:
        wide = [below + (above - below) * height / depth for above, below in zip(rim, floor, strict=True)]
        return tapered_volume((wide[0], wide[1]), (floor[0], floor[1]), height)

    whole = volume(depth)
    if share >= 1:
        return 1 + (share - 1) * whole * 1000 / (rim[0] * rim[1]) / depth
    height = bisect_left(range(ceil(depth)), share * whole, key=lambda mm: volume(Fraction(mm)))
    return min(Fraction(1), height / depth)
