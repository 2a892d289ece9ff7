"""Where no water makes the dough as warm as wanted: what else is to be cooler or warmer when it goes in, and by how much."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.water.dough_temperature import NOTHING, Balance, capacity
from manchet.figures.water.mix_inputs import MixInput
from manchet.records import NamedTuple

ICED = Fraction(0)
"""Celsius of water with ice in it."""

COOLEST, WARMEST = Fraction(4), Fraction(40)
"""Celsius to which a thing can be brought before it goes in: a fridge, and what does yeast no harm. Our rule."""


class WayOut(NamedTuple):
    """One thing that goes in, and how warm it is to be, in Celsius; the rest stays as it is."""

    thing: MixInput
    celsius: Fraction

    @property
    def name(self) -> str:
        return self.thing.portion.name

    @property
    def cooler(self) -> bool:
        return self.celsius < self.thing.celsius


def way_out(balance: Balance, liquid: Fraction | None = None) -> WayOut | None:
    """The one thing that sets the dough right, with the free liquid at `liquid` Celsius or as warm as it comes.

    What has the wrong warmth most of all comes first, stages before what is weighed; None where no one thing is enough.
    """
    excess = (balance.dough(liquid).likely - balance.wanted) * balance.capacity
    for thing in sorted(balance.rest, key=lambda t: (_is_amiss(t, balance, excess), _room(t, excess)), reverse=True):
        if not thing.capacity:
            continue
        needed = thing.celsius - excess / thing.capacity
        if needed >= COOLEST and (excess > 0 or needed <= WARMEST):
            return WayOut(thing, needed)
    return None


def way_out_with_water(balance: Balance, tap: Fraction | None) -> WayOut | None:
    """The same where there is a liquid: as it comes from the tap, else with all the cold of iced water."""
    return (None if tap is None else way_out(balance, tap)) or way_out(balance, ICED)


def misses(balance: Balance, within: Fraction) -> bool:
    """No liquid sets this dough, and it comes out more than `within` Celsius from what is wanted, whatever it is estimated."""
    out = balance.dough()
    return not capacity(balance.free) and not out.low - within <= balance.wanted <= out.high + within


def _is_amiss(thing: MixInput, balance: Balance, excess: Fraction) -> bool:
    """A stage that is itself on the wrong side of the wanted warmth."""
    return bool(thing.portion.stage) and (thing.celsius - balance.wanted) * excess > NOTHING


def _room(thing: MixInput, excess: Fraction) -> Fraction:
    """kJ that it can give up, or take."""
    return thing.capacity * ((thing.celsius - COOLEST) if excess > 0 else (WARMEST - thing.celsius))
