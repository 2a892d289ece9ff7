"""What goes into an oven: each bread, or whatever else is baked or roasted there, with its heat, minutes and loads."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from math import ceil
from typing import overload

from manchet.batch.model import PieceBatch
from manchet.batch.work import Work, once
from manchet.figures.oven.curve import floor_heat, oven_of, rising_phase, wanted_heats
from manchet.figures.oven.floor import load_of
from manchet.formula.model import Range, Step, Who
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen, Oven
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN

NOTHING = Fraction(0)
DAY = Fraction(24 * 3600)
"""Seconds in which a dough's loads are baked, one after another."""
MOST_LOADS = 500
"""Loads of one bake that are told one by one, however short they are. Our own rule."""
DRYING = Fraction(150)
"""Celsius under which a phase dries and bakes nothing: it goes in by itself when the oven has fallen so far. Our rule."""


class Holds(NamedTuple):
    """How many lie in an oven at once, and who says so: "step" (`6 at a time`), "kitchen" (`holds`), "floor" (measured)."""

    number: int
    by: str


class Bake(NamedTuple):
    """One thing that goes into an oven, in as many loads as it takes. Its phases are done without leaving the oven."""

    formula: str
    noun: str
    """`loaves`; "" where the dough is not parted."""
    stage: str
    """A stage that is baked or roasted before it goes into a dough; "" for the bread itself."""
    phases: tuple[Step, ...]
    oven: Oven
    heat: Range
    """The heat it goes in at, Celsius: the floor's, where the file tells them apart; where it goes to, where it says no more."""
    each: str
    """What its pieces are called; "" where they are of several sorts, or not counted."""
    pieces: Fraction
    """0 where it is not counted in pieces."""
    grams: Fraction
    """The dough of all of it."""
    holds: Holds | None
    """None: nobody knows how many go in at once; they are taken to go in together."""

    @property
    def wants(self) -> tuple[Fraction, Fraction]:
        """From what heat to what heat it may go in, the coldest first."""
        return wanted_heats(self.heat)

    @property
    def dries(self) -> bool:
        return dries(self.phases[0])

    @property
    def rises(self) -> bool:
        """An oven whose fire is out cannot bake it."""
        return bool(self.phases[0].by_fire) or rising_phase(self.phases) is not None

    @property
    def turns(self) -> int:
        """How often the oven is filled anew without a stop: for what says its own `6 at a time`; else once."""
        return (
            len(loads_of(self.pieces * self.phases[0].stands_each, self.holds))
            if self.holds is not None and self.holds.by == "step"
            else 1
        )

    @property
    def seconds(self) -> Range:
        """From going in to coming out of a load, shortest and longest; no length where a phase has none."""
        ends = [_ends(step) for step in self.phases]
        low, high = (sum(part, NOTHING) * self.turns for part in zip(*ends, strict=True))
        return Range(low, high)

    @property
    def loads(self) -> Loads:
        """The pieces of each load, full ones first; one load where they are not counted, and of what goes in and out
        without a stop."""
        return Loads(self.pieces, None) if self.turns > 1 else loads_of(self.pieces, self.holds)

    @property
    def lasts(self) -> Fraction:
        """Seconds from the first load's going in to the last one's coming out, the oven coming back between two."""
        number = len(self.loads)
        return self.seconds.likely * number + (self.oven.recovers or NOTHING) * (number - 1)

    @property
    def of_a_day(self) -> bool:
        """Whether its loads, one after another, are baked in a day, and are few enough to be told one by one."""
        return len(self.loads) == 1 or (len(self.loads) <= MOST_LOADS and self.lasts <= DAY)


def _ends(step: Step) -> tuple[Fraction, Fraction]:
    if step.time is None:
        return NOTHING, NOTHING
    sides = 2 if step.per == "side" else 1
    low = step.time.low if step.time.low is not None else step.time.likely
    high = step.time.high if step.time.high is not None else step.time.likely
    return low * sides, high * sides


class Loads(Sequence[Fraction]):
    """So many pieces, `at_once` at a time (None: all of them): the pieces of each load, full ones first. Counted, never listed."""

    def __init__(self, pieces: Fraction, at_once: int | None) -> None:
        self.pieces, self.at_once = pieces, at_once

    def __len__(self) -> int:
        return 1 if self.at_once is None else max(1, ceil(self.pieces / self.at_once))

    @overload
    def __getitem__(self, at: int) -> Fraction: ...
    @overload
    def __getitem__(self, at: slice) -> list[Fraction]: ...
    def __getitem__(self, at: int | slice) -> Fraction | list[Fraction]:
        if isinstance(at, slice):
            return [self[one] for one in range(*at.indices(len(self)))]
        last = len(self) - 1
        if not -last - 1 <= at <= last:
            raise IndexError(at)
        if self.at_once is None or at not in (last, -1):
            return self.pieces if self.at_once is None else Fraction(self.at_once)
        return self.pieces - last * self.at_once


def loads_of(pieces: Fraction, holds: Holds | None) -> Loads:
    """So many pieces in loads, full ones first; one load where nobody knows how many go in at once."""
    return Loads(pieces, None if holds is None else holds.number)


@once
def bakes_of(work: Work) -> tuple[Bake, ...]:
    """All that a batch bakes or roasts at a heat the file gives, in working order."""
    return tuple(_bakes(work))


def _bakes(work: Work) -> Iterator[Bake]:
    batch, kitchen = work.batch, work.kitchen
    for made in batch.stages[:-1]:
        for phases in runs(made.stage.steps, kitchen):
            for bake in _in_oven(phases, kitchen, made.stage.name, made.into):
                yield bake._replace(formula=batch.formula.name)
    formula = batch.formula
    for called, steps in formula.ways:
        noun = called if formula.is_parted else ""
        sorts = tuple(piece for piece in batch.pieces if not noun or same_noun(noun, piece.noun))
        pieces = sum((piece.number for piece in sorts), NOTHING)
        grams = sum((piece.number * piece.grams for piece in sorts), NOTHING) or batch.divided
        for phases in runs(steps, kitchen):
            for bake in _in_oven(phases, kitchen, "", grams):
                holds = holds_of(work, phases[0], sorts, bake.oven)
                each = sorts[0].noun if len(sorts) == 1 else ""
                yield bake._replace(formula=formula.name, noun=noun, each=each, pieces=pieces, holds=holds)


def _in_oven(phases: tuple[Step, ...], kitchen: Kitchen, stage: str, grams: Fraction) -> Iterator[Bake]:
    oven, first = oven_of(phases[0], kitchen), phases[0]
    heat = floor_heat(first) or (first.ramp[1] if first.ramp is not None else None)
    if oven is not None and heat is not None:
        yield Bake("", "", stage, phases, oven, heat, "", NOTHING, grams, None)


def holds_of(work: Work, first: Step, sorts: tuple[PieceBatch, ...], oven: Oven) -> Holds | None:
    """How many of these pieces lie in the oven at once. Of several sorts in one bake: as many as of the bulkiest."""
    if first.at_a_time:
        return Holds(first.at_a_time, "step")
    said = [next((n for n, held in oven.holds if same_noun(held, piece.noun)), 0) for piece in sorts]
    if said and all(said):
        return Holds(min(said), "kitchen")
    on_trays = [_on_vessels(work, first, piece.noun, oven) for piece in sorts]
    if on_trays and all(on_trays):
        return Holds(min(on_trays), "kitchen")
    loads = [load_of(work, piece, oven) for piece in sorts]
    room = [load.number for load in loads if load is not None and load.number]
    return Holds(min(room), "floor") if room and len(room) == len(sorts) else None


def _on_vessels(work: Work, first: Step, noun: str, oven: Oven) -> int:
    """How many pieces the trays hold that the oven takes at once (`holds 4 trays`, a tray `holds 12 buns`); 0 where the
    kitchen does not say both, or they lie on no tray."""
    way = next((steps for _, steps in work.formula.ways if first in steps), ())
    for step in reversed(way[: way.index(first)] if first in way else ()):
        vessel = work.kitchen.vessel(step.where[1]) if step.where else None
        if vessel is None:
            continue
        places = next((n for n, held in oven.holds if same_noun(held, vessel.word)), 0)
        return places * next((n for n, held in vessel.holds if same_noun(held, noun)), 0)
    return 0


def runs(steps: Iterable[Step], kitchen: Kitchen) -> Iterator[tuple[Step, ...]]:
    """The phases of each bake. What is done by hand between two phases (turned out of the tin, brushed) does not end a
    bake; a wait does, another oven does, and so does a heat that only dries.
    """
    phases: list[Step] = []
    for step in steps:
        if step.verb not in IN_OVEN:
            if phases and step.who is not Who.HANDS:
                yield tuple(phases)
                phases = []
            continue
        if phases and (dries(step) > dries(phases[-1]) or oven_of(step, kitchen) != oven_of(phases[-1], kitchen)):
            yield tuple(phases)
            phases = []
        phases.append(step)
    if phases:
        yield tuple(phases)


def dries(step: Step) -> bool:
    """A phase that dries and bakes nothing; not one that begins cold and rises to a heat that bakes."""
    ends = [
        end.likely for end in (floor_heat(step), step.ramp[1] if step.ramp is not None else None) if end is not None
    ]
    return bool(ends) and max(ends) < DRYING
