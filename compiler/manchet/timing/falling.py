"""How hot a falling oven is when each load goes in: from the first load's own heat on, down the kitchen's curve."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from fractions import Fraction

from manchet.figures.oven_curve import after, floor_heat, hours_to, oven_of, wanted
from manchet.formula.model import Range
from manchet.larder.kitchen import Kitchen
from manchet.timing.card_values import Floor, Row


def with_floors(rows: tuple[Row, ...], kitchen: Kitchen) -> tuple[Row, ...]:
    """The rows; those at which a load goes into an oven whose fall is known say how hot its floor is then.

    The oven is taken to be as hot as the first load after it was lit wants it; what loads take out of it is not counted.
    """
    return tuple(_rows(rows, kitchen)) if any(oven.falls for oven in kitchen.ovens) else rows


def _rows(rows: tuple[Row, ...], kitchen: Kitchen) -> Iterator[Row]:
    begun: dict[str, tuple[datetime, Range]] = {}
    inside: set[tuple[str, str, int]] = set()
    for row in rows:
        if row.job == "preheat":
            begun.pop(row.place, None)
        load = (row.stage, row.branch, row.mix)
        if row.job == "take out of oven":
            inside.discard(load)
        step = row.step
        oven = None if step is None or row.job != "step" or step.verb != "bake" else oven_of(step, kitchen)
        heat = None if step is None else floor_heat(step)
        if oven is None or heat is None or load in inside or hours_to(oven.falls, heat.likely) is None:
            yield row
            continue
        inside.add(load)
        first, start = begun.setdefault(oven.name, (row.start, heat))
        hours = Fraction(int((row.start - first).total_seconds()), 3600)
        now = after(oven.falls, start.likely, hours)
        yield row if now is None else row._replace(floor=Floor(heat, now, wanted(heat)[0], hours > 0))
