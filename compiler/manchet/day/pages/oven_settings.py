"""What is done to an oven that is set, and by which job: switched on, set to another heat between two loads, switched off."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from fractions import Fraction

from manchet.day.floors import deck_mates, floor_at, heat_for_all
from manchet.day.model import DayLoad
from manchet.day.pages.day_plan import DayPlan
from manchet.records import NamedTuple

STAYS_ON = 120
"""Minutes between two loads from which on it is said that the oven stays on. Our own rule."""
TOLD_TO = 5
"""Degrees Celsius to which a heat is set. Our own rule."""


class DeckTurn(Enum):
    ON = "on"
    TO = "to"
    OFF = "off"


class OvenSetting(NamedTuple):
    """One deck, one turn of its knob."""

    oven: str
    deck: int
    """From 0."""
    turn: DeckTurn
    job: int
    """The job with which it is done: that lights, or that takes out the load before."""
    celsius: Fraction | None
    """What it is set to; None where no file says, and of `OFF`."""
    load: int
    """The number of the load that it is set for; -1 of `OFF`."""


def settings_of(plan: DayPlan) -> tuple[OvenSetting, ...]:
    """Of all ovens that are set, as they are done. An oven that the plan does not heat is on by itself, and stays so."""
    found = (setting for oven in plan.day.ovens if not oven.curve for setting in _of_oven(plan, oven.name))
    return tuple(sorted(found, key=lambda one: (plan.begins(one.job), one.oven, one.deck)))


def _of_oven(plan: DayPlan, oven: str) -> Iterator[OvenSetting]:
    day, timetable = plan.day, plan.timetable
    fires = sorted((fire.light for fire in day.fires if fire.oven == oven), key=plan.begins)
    for deck in sorted({on for one, on in zip(day.loads, timetable.decks, strict=True) if one.oven == oven}):
        groups = _groups(plan, oven, deck)
        before: tuple[DayLoad, ...] = ()
        for group in groups:
            celsius = _to_fives(floor_at(day, timetable, group[0]))
            load = day.loads.index(group[0])
            lit = [fire for fire in fires if plan.begins(fire) <= plan.begins(group[0].put)]
            anew = lit and (not before or plan.begins(lit[-1]) >= plan.begins(_last_out(plan, before)))
            if anew:
                if before:
                    yield OvenSetting(oven, deck, DeckTurn.OFF, _last_out(plan, before), None, -1)
                yield OvenSetting(oven, deck, DeckTurn.ON, lit[-1], celsius, load)
            elif (
                before
                and celsius is not None
                and (
                    celsius != _to_fives(heat_for_all(before, lambda one: one.leaves))
                    or plan.begins(group[0].put) - plan.begins(_last_out(plan, before)) >= STAYS_ON
                )
            ):
                yield OvenSetting(oven, deck, DeckTurn.TO, _last_out(plan, before), celsius, load)
            before = group
        if before and fires:
            yield OvenSetting(oven, deck, DeckTurn.OFF, _last_out(plan, before), None, -1)


def _groups(plan: DayPlan, oven: str, deck: int) -> list[tuple[DayLoad, ...]]:
    """The loads of a deck, those that are in together as one, as they go in."""
    mine = [plan.day.loads[at] for at in plan.loads_in_order()]
    groups: list[tuple[DayLoad, ...]] = []
    for load in mine:
        if load.oven == oven and plan.timetable.decks[plan.day.loads.index(load)] == deck:
            if groups and load in deck_mates(plan.day, plan.timetable, groups[-1][0]):
                groups[-1] = (*groups[-1], load)
            else:
                groups.append((load,))
    return groups


def _last_out(plan: DayPlan, group: tuple[DayLoad, ...]) -> int:
    return max((load.take for load in group), key=plan.begins)


def _to_fives(celsius: Fraction | None) -> Fraction | None:
    return None if celsius is None else Fraction(round(celsius / TOLD_TO)) * TOLD_TO
