"""How hot a floor is when a load goes in: of a falling oven by its curve, of any other what it is set to."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction
from itertools import pairwise

from manchet.day.goals import minute_of_curve
from manchet.day.model import CurvePoint, Day, DayLoad, HeatSpan, Timetable


def floor_at(day: Day, timetable: Timetable, load: DayLoad) -> Fraction | None:
    """Degrees Celsius; None where neither the oven nor the bread says any, and of food at the mouth of a fire."""
    oven = next(oven for oven in day.ovens if oven.name == load.oven)
    minute = minute_of_curve(day, timetable, load) if oven.curve else None
    if minute is not None:
        return None if minute < 0 else heat_of(oven.curve, Fraction(minute))
    return heat_for_all(deck_mates(day, timetable, load), lambda one: one.enters)


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
