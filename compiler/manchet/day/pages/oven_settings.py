"""What is done to an oven that is set, and by which job: switched on, set to another heat between two loads, switched off."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from fractions import Fraction

from manchet.day.floors import deck_mates, heat_for_all, set_for
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
    """The job with which it is done: that lights, that takes out the load before, or, to switch it on again, any other."""
    celsius: Fraction | None
    """What it is set to; None where no file says, and of `OFF`."""
    load: int
    """The number of the load that it is set for; -1 of `OFF`."""
    by: int | None = None
    """The last minute for it where it is switched on again beside a job of another kind: the deck is hot in time from then on."""


def settings_of(plan: DayPlan) -> tuple[OvenSetting, ...]:
    """Of all ovens that are set, as they are done. An oven that the plan does not heat is on by itself, and stays so."""
    found = (setting for oven in plan.day.ovens if not oven.curve for setting in _of_oven(plan, oven.name))
    return tuple(sorted(found, key=lambda one: (plan.begins(one.job), one.oven, one.deck)))


def _of_oven(plan: DayPlan, oven: str) -> Iterator[OvenSetting]:
    fires = _fires(plan, oven)
    decks = (deck for one, deck in zip(plan.day.loads, plan.timetable.decks, strict=True) if one.oven == oven)
    for deck in sorted(set(decks)):
        before: tuple[DayLoad, ...] = ()
        for group in _groups(plan, oven, deck):
            lights = _switched_on(plan, oven, before, group)
            yield from _for_group(plan, _Deck(oven, deck), lights, before, group)
            before = group
        if before and fires:
            yield OvenSetting(oven, deck, DeckTurn.OFF, _last_out(plan, before), None, -1)


class _Deck(NamedTuple):
    oven: str
    deck: int


def _for_group(
    plan: DayPlan, on: _Deck, lights: int | None, before: tuple[DayLoad, ...], group: tuple[DayLoad, ...]
) -> Iterator[OvenSetting]:
    """What is done for one group of loads, after another."""
    celsius = _to_fives(set_for(plan.day, plan.timetable, group[0]))
    load = plan.day.loads.index(group[0])
    if lights is not None:
        if before:
            yield OvenSetting(*on, DeckTurn.OFF, _last_out(plan, before), None, -1)
        by = (
            None if not before or lights in _fires(plan, on.oven) else plan.begins(group[0].put) - _heats(plan, on.oven)
        )
        yield OvenSetting(*on, DeckTurn.ON, lights, celsius, load, by)
    elif before and celsius is not None:
        apart = plan.begins(group[0].put) - plan.begins(_last_out(plan, before))
        if apart >= STAYS_ON or celsius != _to_fives(heat_for_all(before, lambda one: one.leaves)):
            yield OvenSetting(*on, DeckTurn.TO, _last_out(plan, before), celsius, load)


def _switched_on(plan: DayPlan, oven: str, before: tuple[DayLoad, ...], group: tuple[DayLoad, ...]) -> int | None:
    """The job with which a deck is switched on for a group: the plan's own, else, where it would be off for as long as it heats at
    least, the last that anybody does before it has to be. None where it stays on."""
    into = plan.begins(group[0].put)
    lit = [fire for fire in _fires(plan, oven) if plan.begins(fire) <= into]
    if not lit:
        return None
    if not before or plan.begins(lit[-1]) >= plan.begins(_last_out(plan, before)):
        return lit[-1]
    heats = _heats(plan, oven)
    first, last = plan.begins(_last_out(plan, before)) + heats, into - heats
    mine = [
        job
        for job, shift in enumerate(plan.timetable.shifts)
        if shift >= 0 and not plan.day.jobs[job].is_break and first <= plan.begins(job) <= last
    ]
    return max(mine, key=lambda job: (plan.begins(job), -job), default=None)


def _fires(plan: DayPlan, oven: str) -> list[int]:
    """The jobs that light it, as they begin."""
    return sorted((fire.light for fire in plan.day.fires if fire.oven == oven), key=plan.begins)


def _heats(plan: DayPlan, oven: str) -> int:
    """Minutes that it takes to be hot."""
    return max(fire.heats for fire in plan.day.fires if fire.oven == oven)


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
