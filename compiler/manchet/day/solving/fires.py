"""Fires: while one heats the oven, nothing else is in it but at the mouth; a falling oven is then read off its curve.

The floor is linear in minutes of the curve: those since the fire was out, and what each load before took beyond its time.
"""

from __future__ import annotations

from itertools import combinations, permutations

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model_helper import Literal

from manchet.day.model import DayLoad, DayOven, Fire
from manchet.day.solving.frame import Frame
from manchet.day.solving.ovens import Turns
from manchet.day.windows import minutes_in_heat
from manchet.records import NamedTuple

Order = dict[tuple[int, int], Literal]
"""Of two things by their numbers: that the first comes before the second."""


class Side(NamedTuple):
    """Where a load lies to a fire: neither means before it is lit."""

    behind: Literal
    """It goes in after the fire is out."""
    mouth: Literal
    """It stands at the mouth while the oven heats."""


class Hearth(NamedTuple):
    """An oven that is fired."""

    oven: DayOven
    fires: list[Fire]
    order: Order
    """Of the fires."""
    sides: dict[int, list[Side]]
    """Of each load to each fire."""


class CurveMinute(NamedTuple):
    """How far down a falling oven's curve a load goes in, as long as it belongs to this fire."""

    load: int
    minute: cp_model.LinearExprT
    last: int
    """The last minute of the curve at which it may."""
    belongs: Literal


def add_fires(frame: Frame) -> list[Hearth]:
    hearths = []
    for oven in frame.day.ovens:
        fires = [fire for fire in frame.day.fires if fire.oven == oven.name]
        if fires or oven.curve:
            order = _one_after_another(frame, fires)
            sides = {
                number: _sides(frame, oven, fires, load)
                for number, load in enumerate(frame.day.loads)
                if load.oven == oven.name
            }
            hearths.append(Hearth(oven, fires, order, sides))
    return hearths


def mouths_of(frame: Frame, hearths: list[Hearth]) -> dict[int, Literal]:
    """Of each load that may stand at the mouth, that it does."""
    mouths: dict[int, Literal] = {}
    for hearth in hearths:
        for number, sides in hearth.sides.items():
            stands = [side.mouth for side in sides if side.mouth is not frame.false]
            if stands:
                mouths[number] = frame.boolean()
                frame.model.add(sum(stands) == mouths[number])
    return mouths


def add_floors(frame: Frame, hearths: list[Hearth], turns: Turns) -> list[CurveMinute]:
    """Gives the loads whose floor may become too cold for them, with each fire that they could belong to."""
    floors: list[CurveMinute] = []
    for hearth in hearths:
        if hearth.oven.curve:
            openings = _openings(frame, hearth, turns)
            for number in hearth.sides:
                floors.extend(_floors(frame, hearth, number, openings))
    return floors


def _one_after_another(frame: Frame, fires: list[Fire]) -> Order:
    order: Order = {}
    for one, other in combinations(range(len(fires)), 2):
        order[one, other] = frame.follows(fires[one].light, fires[other].light, fires[one].heats)
        order[other, one] = frame.follows(fires[other].light, fires[one].light, fires[other].heats)
        frame.exactly_one([order[one, other], order[other, one]])
    return order


def _sides(frame: Frame, oven: DayOven, fires: list[Fire], load: DayLoad) -> list[Side]:
    """To each fire; it is behind one at least, or at the mouth of one."""
    sides = []
    for fire in fires:
        side = Side(frame.follows(fire.light, load.put, fire.heats), _at_the_mouth(frame, oven, fire, load))
        before = frame.follows(load.put, fire.light, load.stays + frame.length(load.take))
        frame.exactly_one([*side, before])
        sides.append(side)
    frame.model.add_bool_or([literal for side in sides for literal in side])
    return sides


def _at_the_mouth(frame: Frame, oven: DayOven, fire: Fire, load: DayLoad) -> Literal:
    stays = load.stays + frame.length(load.take)
    if not load.at_the_mouth or min(oven.mouth_from, fire.heats) - oven.mouth_until < stays:
        return frame.false
    stands = frame.boolean()
    frame.lag(fire.light, load.put, max(fire.heats - oven.mouth_from, 0), stands)
    frame.lag(load.put, fire.light, stays + oven.mouth_until - fire.heats, stands)
    return stands


def _openings(frame: Frame, hearth: Hearth, turns: Turns) -> Order:
    """Of each two loads, that the first goes in through an opening of the door before that of the second."""
    order: Order = {}
    oven, loads = hearth.oven, frame.day.loads
    for one, other in combinations(hearth.sides, 2):
        shortest = min(loads[number].stays + frame.length(loads[number].take) for number in (one, other))
        if oven.decks == 1 and shortest > oven.within:
            order[one, other], order[other, one] = turns[one, other].before, turns[one, other].after
            continue
        first, second = loads[one].put, loads[other].put
        order[one, other] = frame.follows(first, second, oven.within + 1)
        order[other, one] = frame.follows(second, first, oven.within + 1)
        at_once = frame.boolean()
        frame.lag(first, second, -oven.within, at_once)
        frame.lag(second, first, -oven.within, at_once)
        frame.exactly_one([order[one, other], order[other, one], at_once])
    return order


def _floors(frame: Frame, hearth: Hearth, number: int, openings: Order) -> list[CurveMinute]:
    """A load belongs to the last fire that was out before it went in; there its floor is neither too hot nor too cold."""
    load = frame.day.loads[number]
    first, last = minutes_in_heat(hearth.oven, load)
    belongs = _belongs(frame, hearth, number)
    floors = []
    for at, fire in enumerate(hearth.fires):
        before = [
            (_both(frame, openings[other, number], sides[at].behind), frame.day.loads[other].extra)
            for other, sides in hearth.sides.items()
            if other != number and frame.day.loads[other].extra
        ]
        minute = frame.starts[load.put] - frame.starts[fire.light] - fire.heats
        minute += cp_model.LinearExpr.weighted_sum([literal for literal, _ in before], [extra for _, extra in before])
        if first > 0:
            frame.model.add(minute >= first).only_enforce_if(belongs[at])
        if last is not None:
            frame.model.add(minute <= last).only_enforce_if(belongs[at])
            floors.append(CurveMinute(number, minute, last, belongs[at]))
    return floors


def _belongs(frame: Frame, hearth: Hearth, number: int) -> list[Literal]:
    """For each fire, that the load belongs to it."""
    mine = hearth.sides[number]
    if len(mine) == 1:
        return [mine[0].behind]
    belongs = [frame.boolean() for _ in mine]
    frame.exactly_one([*belongs, *(side.mouth for side in mine)])
    for one, other in permutations(range(len(mine)), 2):
        frame.model.add_bool_or(~belongs[one], ~mine[other].behind, hearth.order[other, one])
    for literal, side in zip(belongs, mine, strict=True):
        frame.model.add_implication(literal, side.behind)
    return belongs


def _both(frame: Frame, one: Literal, other: Literal) -> Literal:
    if one is frame.true or other is frame.true:
        return other if one is frame.true else one
    both = frame.boolean()
    frame.model.add_implication(both, one)
    frame.model.add_implication(both, other)
    frame.model.add_bool_or(both, ~one, ~other)
    return both
