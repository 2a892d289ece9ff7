"""How hot a floor is when a load goes in: of a falling oven by its curve, of any other what it is set to, or how far it has
come there since the load before."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction
from itertools import pairwise

from manchet.day.goals import minute_of_curve
from manchet.day.model import CurvePoint, Day, DayLoad, DayOven, HeatSpan, Timetable


def floor_at(day: Day, timetable: Timetable, load: DayLoad) -> Fraction | None:
    """Degrees Celsius; None where neither the oven nor the bread says any, and of food at the mouth of a fire."""
    oven = next(oven for oven in day.ovens if oven.name == load.oven)
    minute = minute_of_curve(day, timetable, load) if oven.curve else None
    if minute is not None:
        return None if minute < 0 else heat_of(oven.curve, Fraction(minute))
    is_set = set_for(day, timetable, load)
    before = _before(day, timetable, load)
    if is_set is None or not before:
        return is_set
    was_set = heat_for_all(before, lambda one: one.leaves)
    empty = max(timetable.starts[one.take] + day.jobs[one.take].minutes for one in before)
    into = min(timetable.starts[one.put] for one in deck_mates(day, timetable, load))
    return is_set if was_set is None else _come_to(oven, was_set, is_set, into - empty)


def set_for(day: Day, timetable: Timetable, load: DayLoad) -> Fraction | None:
    """What the deck of a load is set to for it and for what goes in with it; None where no file says any heat."""
    return heat_for_all(deck_mates(day, timetable, load), lambda one: one.enters)


def _come_to(oven: DayOven, heat: Fraction, wanted: Fraction, minutes: int) -> Fraction:
    """Where an oven is so many minutes after it was set from one heat to another."""
    if oven.sinks and wanted < heat:
        return max(wanted, heat - oven.sinks * minutes)
    if oven.climbs and wanted > heat:
        return min(wanted, heat + oven.climbs * minutes)
    return wanted


def _before(day: Day, timetable: Timetable, load: DayLoad) -> tuple[DayLoad, ...]:
    """The loads that were last on its deck, together, before it and its mates go in."""
    loads = list(zip(day.loads, timetable.decks, strict=True))
    deck = next(deck for one, deck in loads if one.key == load.key)
    into = min(timetable.starts[one.put] for one in deck_mates(day, timetable, load))
    earlier = [one for one, on in loads if (one.oven, on) == (load.oven, deck) and timetable.starts[one.take] < into]
    if not earlier:
        return ()
    return deck_mates(day, timetable, max(earlier, key=lambda one: timetable.starts[one.take]))


def deck_mates(day: Day, timetable: Timetable, load: DayLoad) -> tuple[DayLoad, ...]:
    """The loads that are on one deck together, itself among them, as they go in."""
    loads = list(zip(day.loads, timetable.decks, strict=True))
    deck = next(deck for one, deck in loads if one.key == load.key)
    into, out = timetable.starts[load.put], timetable.starts[load.take]
    there = (
        one
        for one, on in loads
        if (one.oven, on) == (load.oven, deck)
        and timetable.starts[one.put] <= out
        and timetable.starts[one.take] >= into
    )
    return tuple(sorted(there, key=lambda one: timetable.starts[one.put]))


def heat_for_all(loads: Iterable[DayLoad], heat: Callable[[DayLoad], HeatSpan | None]) -> Fraction | None:
    """What a deck is set to that suits all that are on it: the middle of the heats that they have in common, of the first
    alone where they have none; None where no file says any."""
    spans = [span for one in loads if (span := heat(one)) is not None]
    if not spans:
        return None
    low, high = max(span.low for span in spans), min(span.high for span in spans)
    return (low + high) / 2 if low <= high else (spans[0].low + spans[0].high) / 2


def heat_of(curve: tuple[CurvePoint, ...], minute: Fraction) -> Fraction:
    """Degrees Celsius so many minutes down a curve; as cold as its end beyond that."""
    for hotter, colder in pairwise(curve):
        if hotter.minute <= minute <= colder.minute:
            part = (minute - hotter.minute) / (colder.minute - hotter.minute)
            return hotter.celsius + part * (colder.celsius - hotter.celsius)
    return curve[-1].celsius if minute > curve[-1].minute else curve[0].celsius
