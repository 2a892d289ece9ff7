"""What two loads of one oven have to do with each other, before any plan: whether they may share a deck, and what lies between
them otherwise."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from manchet.day.model import LENGTHS_APART, DayLoad, DayOven, HeatSpan


def may_share(oven: DayOven, one: DayLoad, other: DayLoad) -> bool:
    """They can go in through one opening of the door: they come out about together, and some heat suits both. In a falling oven
    each has its own minutes of the curve, and nothing more is asked. Nothing is asked of two that are in it already."""
    return (one.is_in and other.is_in) or (
        abs(one.stays - other.stays) <= LENGTHS_APART
        and (bool(oven.curve) or (_meet(one.enters, other.enters) and _meet(one.leaves, other.leaves)))
    )


def _meet(one: HeatSpan | None, other: HeatSpan | None) -> bool:
    return one is None or other is None or max(one.low, other.low) <= min(one.high, other.high)


def between(oven: DayOven, earlier: DayLoad, later: DayLoad) -> int:
    """Minutes between one load's coming out and the next one's going in, in the same deck: until the oven has recovered, or
    until it is at the heat of the next, whichever is longer."""
    return max(oven.recovers, 0 if oven.curve else _change(oven, earlier, later))


def _change(oven: DayOven, earlier: DayLoad, later: DayLoad) -> int:
    """From the nearest heat that the one may end at by its file to the nearest that the other may begin at by its own: from figure
    to figure where each says one. What may share a deck is another matter: there a figure has some room to either side."""
    if earlier.leaves is None or later.enters is None:
        return 0
    coldest, hottest = _as_written(earlier.leaves)
    least, most = _as_written(later.enters)
    if oven.climbs and least > hottest:
        return ceil((least - hottest) / oven.climbs)
    if oven.sinks and most < coldest:
        return ceil((coldest - most) / oven.sinks)
    return 0


def _as_written(span: HeatSpan) -> tuple[Fraction, Fraction]:
    return span.low + span.near, span.high - span.near
