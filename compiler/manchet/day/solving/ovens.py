"""Ovens: of two loads one goes in before the other, or both through one opening of the door, or each has a deck of its own."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations
from math import ceil, lcm

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model_helper import Literal

from manchet.day.model import DayLoad, DayOven
from manchet.day.solving.alike import Shared, share_out
from manchet.day.solving.frame import Frame
from manchet.day.together import between, may_share
from manchet.records import NamedTuple

FINEST_SHARE = 10_000
"""Shares of a deck are counted in parts of it, at most so many; finer ones are rounded up."""

Decks = dict[int, dict[int, Literal]]
"""For each load, by the number of a deck: that it has this one."""


class Turn(NamedTuple):
    """How two loads lie to each other: exactly one of these."""

    before: Literal
    after: Literal
    together: Literal
    elsewhere: Literal
    """Each in a deck of its own."""


Turns = dict[tuple[int, int], Turn]


def add_ovens(frame: Frame, mouths: dict[int, Literal]) -> tuple[Decks, Turns]:
    """`mouths`: of each load that may, that it stands at the mouth."""
    decks: Decks = {}
    turns: Turns = {}
    for oven in frame.day.ovens:
        loads = [number for number, load in enumerate(frame.day.loads) if load.oven == oven.name]
        shared = share_out(frame, len(loads), oven.decks)
        decks.update(zip(loads, shared, strict=True))
        for (one, mine), (other, its) in combinations(zip(loads, shared, strict=True), 2):
            at_the_mouth = [mouths[number] for number in (one, other) if number in mouths]
            turns[one, other] = _turn(frame, oven, one, other, [mine, its], at_the_mouth)
        _fill_decks(frame, oven, loads, shared)
    return decks, turns


def _turn(frame: Frame, oven: DayOven, one: int, other: int, had: Shared, at_the_mouth: list[Literal]) -> Turn:
    first, second = frame.day.loads[one], frame.day.loads[other]
    before = _comes_first(frame, oven, first, second, at_the_mouth)
    after = _comes_first(frame, oven, second, first, at_the_mouth)
    if before is frame.true or after is frame.true:
        return Turn(before, after, frame.false, frame.false)
    turn = Turn(before, after, _together(frame, oven, first, second), _elsewhere(frame, oven, *had))
    frame.exactly_one(turn)
    return turn


def _comes_first(frame: Frame, oven: DayOven, one: DayLoad, other: DayLoad, at_the_mouth: list[Literal]) -> Literal:
    """One load is out before another goes in, and the oven ready for it; what stands at the mouth takes no heat from it."""
    stays = one.stays + frame.length(one.take)
    ready = stays + between(oven, one, other)
    if not at_the_mouth:
        return frame.follows(one.put, other.put, ready)
    first = frame.boolean()
    frame.lag(one.put, other.put, stays, first)
    frame.lag(one.put, other.put, ready, first, *(~literal for literal in at_the_mouth))
    return first


def _together(frame: Frame, oven: DayOven, one: DayLoad, other: DayLoad) -> Literal:
    least, most = frame.apart(one.put, other.put)
    if not may_share(oven, one, other) or least > oven.within or most < -oven.within:
        return frame.false
    shortest = min(load.stays + frame.length(load.take) for load in (one, other))
    if one.share + other.share > 1 and shortest > oven.within:
        return frame.false
    together = frame.boolean()
    frame.lag(one.put, other.put, -oven.within, together)
    frame.lag(other.put, one.put, -oven.within, together)
    return together


def _elsewhere(frame: Frame, oven: DayOven, one: dict[int, Literal], other: dict[int, Literal]) -> Literal:
    if oven.decks == 1:
        return frame.false
    elsewhere = frame.boolean()
    for deck in one.keys() & other.keys():
        frame.model.add_bool_or(~elsewhere, ~one[deck], ~other[deck])
    for deck in one:
        also = [other[deck]] if deck in other else []
        frame.model.add_bool_or(elsewhere, ~one[deck], *also)
    return elsewhere


def _fill_decks(frame: Frame, oven: DayOven, loads: list[int], shared: Shared) -> None:
    """No deck has more in it than it holds: three loads could each go with each of the others."""
    whole = min(lcm(*(frame.day.loads[number].share.denominator for number in loads)), FINEST_SHARE)
    for deck in range(oven.decks):
        found = list(_stays(frame, loads, shared, deck, whole))
        frame.model.add_cumulative([interval for interval, _ in found], [share for _, share in found], whole)


def _stays(
    frame: Frame, loads: list[int], shared: Shared, deck: int, whole: int
) -> Iterator[tuple[cp_model.IntervalVar, int]]:
    for number, mine in zip(loads, shared, strict=True):
        if deck in mine:
            load = frame.day.loads[number]
            more = load.stays + frame.length(load.take) - frame.length(load.put)
            yield frame.interval(load.put, mine[deck], more), ceil(load.share * whole)
