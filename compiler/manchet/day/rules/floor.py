"""The floor of a falling oven, walked down minute by minute from the minute its fire is out."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from manchet.day.model import CurvePoint, Day, DayOven, Timetable
from manchet.day.rules.refusal import Refusal


def floor(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """Each load finds a floor in its heats."""
    for oven in day.ovens:
        outs = sorted(timetable.starts[fire.light] + fire.heats for fire in day.fires if fire.oven == oven.name)
        if not oven.curve:
            continue
        for number, out in enumerate(outs):
            yield from _walk(day, timetable, oven, out, outs[number + 1] if number + 1 < len(outs) else None)


def _walk(day: Day, timetable: Timetable, oven: DayOven, out: int, until: int | None) -> Iterator[Refusal]:
    """One fire. The floor falls on by a minute of its curve each minute; what a load takes from it is felt by those that go
    in through a later opening of the door, and by none of its own."""
    mine = [
        (number, timetable.starts[each.put])
        for number, each in enumerate(day.loads)
        if each.oven == oven.name
        and out <= timetable.starts[each.put]
        and (until is None or timetable.starts[each.put] < until)
    ]
    felt: Counter[int] = Counter()
    for number, start in mine:
        felt[start + oven.within + 1] += day.loads[number].extra
    down = 0
    for minute in range(out, max((start for _, start in mine), default=out) + 1):
        down += felt[minute]
        for number, start in mine:
            enters = day.loads[number].enters
            if start != minute or enters is None:
                continue
            celsius = _celsius(oven.curve, down)
            if celsius is None:
                words = f"{day.loads[number].key} goes in at {minute}, when {oven.name} is colder than anyone bakes"
                yield Refusal("floor", words, (), (number,), minute)
            elif not enters.low <= celsius <= enters.high:
                words = (
                    f"{day.loads[number].key} finds a floor of {round(celsius)} C in {oven.name} at {minute}, "
                    f"and wants {round(enters.low)} to {round(enters.high)} C"
                )
                yield Refusal("floor", words, (), (number,), minute)
        down += 1


def _celsius(curve: tuple[CurvePoint, ...], minute: int) -> Fraction | None:
    """How hot the floor is so many minutes of its curve after the fire; None after the last point."""
    for hotter, colder in pairwise(curve):
        if hotter.minute < colder.minute and minute <= colder.minute:
            part = max(minute - hotter.minute, Fraction(0)) / (colder.minute - hotter.minute)
            return hotter.celsius - part * (hotter.celsius - colder.celsius)
    return curve[-1].celsius if minute <= curve[-1].minute else None
