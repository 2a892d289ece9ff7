"""The loads of a falling oven one after another: when each goes in, at what heat, and what comes too late. Estimates.

The oven is fired to the heat that the first of them may go in at, and no further: a fire to the top of the curve would
only be waited for. From then on time counts, in hours. While a load is in, the floor falls by what a load takes, or by
what it loses in that time anyhow, whichever is more: what was measured with a load has both in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.oven.bakes import Bake
from manchet.figures.oven.curve import heat_at, hours_to
from manchet.kitchen.model import Oven
from manchet.records import NamedTuple

NOTHING = Fraction(0)
HOUR = 3600


class Point(NamedTuple):
    """Hours, and the floor's heat then in Celsius."""

    hours: Fraction
    celsius: Fraction


class Load(NamedTuple):
    """One load: the `number`th of `of` of its bread. It goes in at one point of the floor's way down and comes out at another."""

    bake: Bake
    number: int
    of: int
    pieces: Fraction
    into: Point
    out: Point

    @property
    def is_late(self) -> bool:
        """The floor is colder than it wants."""
        return self.into.celsius < self.bake.wants[0]


class LoadingPlan(NamedTuple):
    """What goes in, in order; what comes too late for its heat; what wants more heat than the curve begins with; what wants
    a heat that rises."""

    oven: Oven
    full: Fraction
    """The dough of the heaviest load, grams: see `full_load`."""
    loads: tuple[Load, ...]
    late: tuple[Load, ...]
    too_hot: tuple[Bake, ...]
    rising: tuple[Bake, ...]
    curve: tuple[Point, ...]
    """The floor's way down, from corner to corner; straight in between."""

    @property
    def lost(self) -> int:
        return len(self.late)

    @property
    def fired_to(self) -> Fraction:
        """Celsius that the floor has when the fire is out, at hour 0."""
        return self.curve[0].celsius


def full_load(bakes: Sequence[Bake]) -> Fraction:
    """The dough of the heaviest load of these, grams: what `each load cools it` is of where it names no weight."""
    return max((_grams(bake, bake.loads[0]) for bake in bakes), default=NOTHING)


def loading_plan(bakes: Sequence[Bake], oven: Oven, full: Fraction) -> LoadingPlan:
    """The loads in the order of `bakes`, each as soon as the oven is free and has fallen to its heat.

    What would go in colder than it wants does not: it is late, and leaves its place to the next. `full`: see `full_load`.
    """
    hottest = oven.falls[0].start
    rising = tuple(bake for bake in bakes if bake.rises)
    too_hot = tuple(bake for bake in bakes if bake.wants[0] > hottest and not bake.rises)
    falling = [bake for bake in bakes if bake not in (*rising, *too_hot)]
    way = _LoadingWay(oven, full, min([hottest, *(bake.wants[1] for bake in falling[:1])]))
    loads: list[Load] = []
    late: list[Load] = []
    for bake in falling:
        for number, pieces in enumerate(bake.loads, 1):
            way.stands_ready()
            if way.floor.celsius < bake.wants[0]:
                late.append(Load(bake, number, len(bake.loads), pieces, way.floor, way.floor))
            else:
                loads.append(way.takes(bake, number, pieces))
    way.falls_to(min((bake.wants[0] for bake in falling), default=hottest))
    return LoadingPlan(oven, full, tuple(loads), tuple(late), too_hot, rising, tuple(way.curve))


def lost_from(bakes: Sequence[Bake], oven: Oven, full: Fraction, celsius: Fraction) -> int:
    """How many loads of these go in too cold if the first goes in at that heat, or when the oven has fallen to its own,
    and every one is baked all the same."""
    way = _LoadingWay(oven, full, oven.falls[0].start)
    way.falls_to(celsius)
    lost = 0
    for bake in bakes:
        for number, pieces in enumerate(bake.loads, 1):
            lost += way.takes(bake, number, pieces).is_late
    return lost


def drop_of(oven: Oven, grams: Fraction, full: Fraction) -> Fraction:
    """Degrees Celsius that a load of so much dough takes out of an oven, by what was measured; 0 where nobody has."""
    takes = oven.load_takes
    whole = (takes.grams or full) if takes is not None else NOTHING
    return takes.drop * grams / whole if takes is not None and whole else NOTHING


class _LoadingWay:
    """The floor's way down while loads go in and come out."""

    def __init__(self, oven: Oven, full: Fraction, fired_to: Fraction) -> None:
        self.oven, self.full = oven, full
        self.floor = Point(NOTHING, fired_to)
        self.on = hours_to(oven.falls, fired_to) or NOTHING
        """Hours down the oven's own curve at which it has the floor's heat."""
        self.bends = tuple(Point(hours_to(oven.falls, fall.start) or NOTHING, fall.start) for fall in oven.falls)
        self.curve = [self.floor]
        self.used = False

    def falls_to(self, celsius: Fraction) -> None:
        """Waits until the floor is no hotter than that."""
        if celsius < self.floor.celsius:
            self._falls((hours_to(self.oven.falls, celsius) or NOTHING) - self.on)

    def stands_ready(self) -> None:
        """Waits until the floor has come back from the load before: until it tells its own heat again."""
        if self.used and self.oven.recovers:
            self._falls(self.oven.recovers / HOUR)
        self.used = False

    def takes(self, bake: Bake, number: int, pieces: Fraction) -> Load:
        """Puts a load in as soon as the floor is no hotter than it wants."""
        self.stands_ready()
        self.falls_to(bake.wants[1])
        into = self.floor
        lasts = bake.seconds.likely / HOUR
        left = into.celsius - drop_of(self.oven, _grams(bake, pieces), self.full)
        if left < heat_at(self.oven.falls, self.on + lasts):
            self._to(Point(into.hours + lasts, left))
            self.on = hours_to(self.oven.falls, left) or NOTHING
        else:
            self._falls(lasts)
        self.used = True
        return Load(bake, number, len(bake.loads), pieces, into, self.floor)

    def _falls(self, hours: Fraction) -> None:
        """The oven's own way down in so many hours, from bend to bend."""
        until = self.on + hours
        for bend in self.bends:
            if self.on < bend.hours < until:
                self._to(Point(self.floor.hours + bend.hours - self.on, bend.celsius))
                self.on = bend.hours
        self._to(Point(self.floor.hours + until - self.on, heat_at(self.oven.falls, until)))
        self.on = until

    def _to(self, point: Point) -> None:
        self.floor = point
        self.curve.append(point)


def _grams(bake: Bake, pieces: Fraction) -> Fraction:
    return bake.grams * pieces / bake.pieces if bake.pieces else bake.grams
