"""What one Work is to a day, before several come together: moments, with the waits between them, and what goes into ovens.

Seconds, exact; whole minutes are made last (`merging`).
"""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.model import Stage, Step
from manchet.records import NamedTuple


class MomentPart(NamedTuple):
    """One step of a moment."""

    step: Step | None
    """None for what no file writes as a step: weighing, loading, taking out, the fire."""
    does: str
    """The verb, or "weigh", "load", "take out", "fold" …"""
    seconds: Fraction
    pieces: Fraction
    is_estimate: bool
    """Nobody says how long it takes."""
    is_machine: bool = False
    by_piece: bool = False
    """Done piece after piece, so that the first is done long before the last."""


class WorkMoment(NamedTuple):
    """Work by hand and machine, one part after the other without a wait."""

    key: str
    bread: str
    """Of the formula."""
    stage: Stage
    parts: tuple[MomentPart, ...]
    mix: int
    load: int
    branch: str
    mixer: str
    making: str
    """The key of the making of a stage that it belongs to; those of a shared stage are the same in every bread."""

    @property
    def seconds(self) -> Fraction:
        return sum((part.seconds for part in self.parts), Fraction(0))


class Gap(NamedTuple):
    """From the beginning of one moment to that of another, in seconds; both are keys."""

    before: str
    after: str
    least: Fraction
    most: Fraction | None
    may: Fraction
    what: str
    is_cold: bool
    steps: tuple[Step, ...] = ()
    """The steps that are the wait."""


class OvenTurn(NamedTuple):
    """A load: put in at one moment, taken out at another."""

    key: str
    bread: str
    stage: Stage
    branch: str
    put: str
    take: str
    stays: Fraction
    """Seconds from the beginning of the one to the beginning of the other."""
    phases: tuple[Step, ...]
    oven: str
    pieces: Fraction
    noun: str
    grams: Fraction
    share: Fraction


class Standing(NamedTuple):
    """Pieces that have a place from one moment to another."""

    place: str
    number: Fraction
    noun: str
    begins: str
    ends: str


class BowlHeld(NamedTuple):
    """A dough has a mixer's bowl from one moment to another, also while it rests between two mixes."""

    mixer: str
    begins: str
    ends: str


class Finished(NamedTuple):
    """Where a sort of piece ends: the moment after which nothing but waiting comes, and how long that waiting is at least."""

    noun: str
    moment: str
    pieces: Fraction
    cools: Fraction


class Using(NamedTuple):
    """A moment that takes something which is not made in this work: a preparation, by key. `offset` seconds into it."""

    preparation: str
    moment: str
    offset: Fraction


class WorkOfDay(NamedTuple):
    """All of one work."""

    bread: str
    moments: tuple[WorkMoment, ...]
    gaps: tuple[Gap, ...]
    loads: tuple[OvenTurn, ...]
    standings: tuple[Standing, ...]
    bowls: tuple[BowlHeld, ...]
    finished: tuple[Finished, ...]
    uses: tuple[Using, ...]
