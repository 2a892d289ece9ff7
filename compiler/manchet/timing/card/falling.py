"""How hot a falling oven is when each load goes in: from the hottest heat on, down the kitchen's curve."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta, tzinfo
from fractions import Fraction
from math import floor as floor_of

from manchet.batch.work import Work
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.curve import heat_after, hours_to
from manchet.figures.oven.loading_plan import drop_of, full_load
from manchet.kitchen.model import Oven
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN
from manchet.timing.card.values import CardRow, FloorHeat
from manchet.timing.zones import later, zone_of


class _FloorReading(NamedTuple):
    at: datetime
    celsius: Fraction


class _Inside(NamedTuple):
    """A load in the oven: the floor when it went in, and how much colder it leaves it at least."""

    oven: Oven
    into: _FloorReading
    takes: Fraction


def with_floors(work: Work, rows: tuple[CardRow, ...]) -> tuple[CardRow, ...]:
    """The rows; those at which a load goes into an oven whose fall is known say how hot its floor is then.

    Hour 0 is where the fire is out (`firings`); without one the oven is taken to be as hot as the first load wants it. What loads take out of it is counted where
    the kitchen says it.
    """
    return tuple(_rows(work, rows)) if any(oven.falls for oven in work.kitchen.ovens) else rows


def _rows(work: Work, rows: tuple[CardRow, ...]) -> Iterator[CardRow]:
    bakes = {bake.phases[0].place: bake for bake in bakes_of(work) if not bake.stage and not bake.rises}
    full = full_load(tuple(bakes.values()))
    floors: dict[str, _FloorReading] = {}
    empty: set[str] = set()
    inside: dict[tuple[str, str, int], _Inside] = {}
    for row in rows:
        if row.job == "preheat":
            floors.pop(row.place, None)
        if row.job == "fire out" and row.celsius is not None:
            floors[row.place] = _FloorReading(row.start, row.celsius.likely)
            empty.add(row.place)
        load = (row.stage, row.branch, row.mix)
        if row.job == "take out of oven" and load in inside:
            out = inside.pop(load)
            now = _now(floors[out.oven.name], row.start, out.oven)
            floors[out.oven.name] = now._replace(celsius=min(now.celsius, out.into.celsius - out.takes))
        goes_in = row.step is not None and row.job == "step" and row.step.verb in IN_OVEN
        bake = bakes.get(row.step.place) if row.step is not None and goes_in and not row.stage else None
        if bake is None or load in inside or hours_to(bake.oven.falls, bake.heat.likely) is None:
            yield row
            continue
        before = floors.get(bake.oven.name)
        into = _FloorReading(row.start, bake.heat.likely) if before is None else _now(before, row.start, bake.oven)
        floors[bake.oven.name] = into
        grams = bake.grams * row.pieces / bake.pieces if bake.pieces and row.pieces else bake.grams
        inside[load] = _Inside(bake.oven, into, drop_of(bake.oven, grams, full))
        fallen = before is not None and before.at < into.at and bake.oven.name not in empty
        empty.discard(bake.oven.name)
        floor = FloorHeat(bake.heat, into.celsius, bake.wants[0], fallen)
        yield _while_it_is_hot(row, floor, bake.oven, zone_of(work.kitchen.zone))._replace(floor=floor)


def _while_it_is_hot(row: CardRow, floor: FloorHeat, oven: Oven, zone: tzinfo | None) -> CardRow:
    """A load can be put off no longer than the floor has the heat for it."""
    now, cold = hours_to(oven.falls, floor.heat), hours_to(oven.falls, floor.least)
    if now is None or cold is None or row.latest is None:
        return row
    until = later(row.start, timedelta(minutes=floor_of(max(cold - now, Fraction(0)) * 60)), zone)
    if until >= row.latest:
        return row
    return row._replace(latest=until, slack=int((until - row.start).total_seconds()) // 60)


def _now(before: _FloorReading, at: datetime, oven: Oven) -> _FloorReading:
    """The floor at a later time, if nothing went in."""
    hours = Fraction(int((at - before.at).total_seconds()), 3600)
    celsius = heat_after(oven.falls, before.celsius, hours)
    return _FloorReading(at, before.celsius if celsius is None else celsius)
