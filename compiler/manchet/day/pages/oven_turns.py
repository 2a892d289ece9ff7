"""What an oven does in a planned day: its loads in order, how hot the floor is, and what gives if it is colder."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.floors import floor_at, heat_of
from manchet.day.goals import minute_of_curve
from manchet.day.model import DayLoad, DayOven, Fire
from manchet.day.pages.day_plan import DayPlan
from manchet.day.pages.spare import spare_of
from manchet.records import NamedTuple


class OvenLoad(NamedTuple):
    """A load at the oven. Minutes of the day."""

    load: int
    number: int
    """From 1, as they go in."""
    into: int
    out: int
    floor: Fraction | None
    """Degrees Celsius."""
    beside: tuple[int, ...]
    """Numbers of those that are in with it."""
    latest: int | None
    """The last minute at which it may go in, by the floor and by its waits; None where nothing bounds it."""
    first_if_colder: int
    """The number of the load to put in first if the floor is under its coldest; 0 where none is ready that wants less."""
    inside: tuple[int, ...]
    """Jobs that are done to it while it is in, as they begin."""


class OvenDay(NamedTuple):
    """One oven, its fires, and its loads."""

    oven: DayOven
    fires: tuple[Fire, ...]
    loads: tuple[OvenLoad, ...]


def ovens_of(plan: DayPlan) -> tuple[OvenDay, ...]:
    """Those that anything goes into."""
    found = []
    for oven in plan.day.ovens:
        mine = [at for at in plan.loads_in_order() if plan.day.loads[at].oven == oven.name]
        if mine:
            fires = tuple(fire for fire in plan.day.fires if fire.oven == oven.name)
            found.append(OvenDay(oven, fires, tuple(_load(plan, oven, mine, at) for at in mine)))
    return tuple(found)


def _load(plan: DayPlan, oven: DayOven, mine: list[int], at: int) -> OvenLoad:
    load = plan.day.loads[at]
    into, out = plan.begins(load.put), plan.begins(load.take)
    spare = min((one.minutes for one in spare_of(plan, at)), default=None)
    return OvenLoad(
        load=at,
        number=mine.index(at) + 1,
        into=into,
        out=out,
        floor=floor_at(plan.day, plan.timetable, load),
        beside=tuple(
            mine.index(other) + 1
            for other in mine
            if other != at
            and plan.begins(plan.day.loads[other].put) < out
            and plan.begins(plan.day.loads[other].take) > into
        ),
        latest=None if spare is None else into + max(spare, 0),
        first_if_colder=_first_if_colder(plan, oven, mine, at),
        inside=jobs_inside(plan, load),
    )


def _first_if_colder(plan: DayPlan, oven: DayOven, mine: list[int], at: int) -> int:
    """The next load that wants a colder floor and whose dough is ready when this one would go in."""
    load = plan.day.loads[at]
    if not oven.curve or load.enters is None:
        return 0
    now = plan.begins(load.put)
    for other in mine[mine.index(at) + 1 :]:
        later = plan.day.loads[other]
        ready = max((plan.begins(w.before) + w.least for w in plan.day.waits if w.after == later.put), default=now)
        if later.enters is not None and later.enters.low < load.enters.low <= later.enters.high and ready <= now:
            return mine.index(other) + 1
    return 0


def jobs_inside(plan: DayPlan, load: DayLoad) -> tuple[int, ...]:
    """What is done to a load while it is in, as it begins."""
    after = {wait.after for wait in plan.day.waits if wait.before == load.put}
    before = {wait.before for wait in plan.day.waits if wait.after == load.take}
    return tuple(sorted(after & before, key=plan.begins))


def minutes_a_degree(plan: DayPlan, oven: DayOven, load: DayLoad) -> Fraction | None:
    """How long the falling floor takes for one degree Celsius, as the load goes in."""
    minute = minute_of_curve(plan.day, plan.timetable, load) if oven.curve else None
    if minute is None or minute < 0:
        return None
    falls = heat_of(oven.curve, Fraction(minute)) - heat_of(oven.curve, Fraction(minute + 10))
    return 10 / falls if falls else None
