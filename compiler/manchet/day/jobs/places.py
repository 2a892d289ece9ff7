"""What runs out: baskets, trays and tins, each whole; and the room in fridges and provers, in units of their own."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from math import ceil, lcm

from manchet.day.jobs.values import Standing
from manchet.day.model import DayPlace
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen


def bowl(mixer: str) -> str:
    """The bowl of a mixer, as a place: a dough that rests between two mixes keeps it."""
    return f"{mixer} bowl"


def places_of(kitchen: Kitchen) -> tuple[DayPlace, ...]:
    """Everything that is counted, or says what it holds."""
    found = [DayPlace(bowl(mixer.name), mixer.number or 1) for mixer in kitchen.mixers]
    for vessel in kitchen.vessels:
        if vessel.number:
            found.append(DayPlace(vessel.name, vessel.number))
    for cold in kitchen.colds:
        if cold.holds:
            found.append(DayPlace(cold.name, (cold.number or 1) * _units(cold.holds)))
    return tuple(found)


def takes(standing: Standing, kitchen: Kitchen) -> int | None:
    """How many units of its place a standing takes; None where nobody says how many of such pieces go in."""
    said = {vessel.name: vessel.holds for vessel in kitchen.vessels} | {cold.name: cold.holds for cold in kitchen.colds}
    holds = said.get(standing.place, ())
    if not holds:
        return None if any(cold.name == standing.place for cold in kitchen.colds) else ceil(standing.number)
    number = next((number for number, noun in holds if same_noun(noun, standing.noun)), None)
    if number is None:
        return None
    if any(vessel.name == standing.place for vessel in kitchen.vessels):
        return ceil(standing.number / number)
    return ceil(standing.number * Fraction(_units(holds), number))


def _units(holds: Iterable[tuple[int, str]]) -> int:
    """So many that each sort of piece takes a whole number of them."""
    return lcm(*(number for number, _ in holds)) if holds else 1
