"""How hot a floor is when a load goes in: of a falling oven by its curve, of any other what it is set to."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from manchet.day.goals import minute_of_curve
from manchet.day.model import CurvePoint, Day, DayLoad, Timetable


def floor_at(day: Day, timetable: Timetable, load: DayLoad) -> Fraction | None:
    """Degrees Celsius; None where neither the oven nor the bread says any, and of food at the mouth of a fire."""
    oven = next(oven for oven in day.ovens if oven.name == load.oven)
    minute = minute_of_curve(day, timetable, load) if oven.curve else None
    if minute is not None:
        return None if minute < 0 else heat_of(oven.curve, Fraction(minute))
    return None if load.enters is None else (load.enters.low + load.enters.high) / 2


def heat_of(curve: tuple[CurvePoint, ...], minute: Fraction) -> Fraction:
    """Degrees Celsius so many minutes down a curve; as cold as its end beyond that."""
    for hotter, colder in pairwise(curve):
        if hotter.minute <= minute <= colder.minute:
            part = (minute - hotter.minute) / (colder.minute - hotter.minute)
            return hotter.celsius + part * (colder.celsius - hotter.celsius)
    return curve[-1].celsius if minute > curve[-1].minute else curve[0].celsius
