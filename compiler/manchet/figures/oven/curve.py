"""A fired oven that grows colder: how hot it is when, and from when to when it has the heat a bread wants. Estimates.

The curve is the kitchen's own: straight stretches, as measured, the last going on. What loads take out of it comes on top
(`loading_plan`); it is the floor's thermometer that decides.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from itertools import pairwise

from manchet.formula.model import Formula, Range, Step
from manchet.kitchen.model import Fall, Kitchen, Oven
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN

NEAR = Fraction(10)
"""Degrees Celsius to either side of a heat that the file gives as one figure. Our rule: an oven's floor differs as much."""
NOTHING = Fraction(0)


def oven_of(step: Step, kitchen: Kitchen) -> Oven | None:
    """The oven a bake or roast names (`bake 20 min in mother`), else the first of the kitchen; None for other steps."""
    if step.verb not in IN_OVEN:
        return None
    first = next(iter(kitchen.ovens), None)
    named = step.where[1].casefold() if step.where is not None else ""
    if not named:
        return first
    return next((oven for oven in kitchen.ovens if oven.name.casefold() in named), first)


def heat_after(falls: tuple[Fall, ...], start: Fraction, hours: Fraction) -> Fraction | None:
    """Degrees Celsius that many hours after the oven had `start`. None: hotter than anybody has measured."""
    begun = hours_to(falls, start)
    return None if begun is None else heat_at(falls, begun + hours)


def heat_at(falls: tuple[Fall, ...], hours: Fraction) -> Fraction:
    """Degrees Celsius so many hours after the hottest heat the kitchen gives."""
    for fall, below in pairwise(falls):
        lasts = (fall.start - below.start) / fall.an_hour
        if hours <= lasts:
            return fall.start - hours * fall.an_hour
        hours -= lasts
    return falls[-1].start - hours * falls[-1].an_hour


def hours_to(falls: tuple[Fall, ...], celsius: Fraction) -> Fraction | None:
    """Hours from the hottest heat the kitchen gives until the oven has fallen to this one. None: it is hotter."""
    if not falls or celsius > falls[0].start:
        return None
    hours = NOTHING
    for fall, below in pairwise(falls):
        if celsius >= below.start:
            return hours + (fall.start - celsius) / fall.an_hour
        hours += (fall.start - below.start) / fall.an_hour
    return hours + (falls[-1].start - celsius) / falls[-1].an_hour


def fastest(falls: tuple[Fall, ...]) -> tuple[Fall, ...]:
    """The curve of an oven that loses as much as its ranges say at most."""
    return tuple(fall._replace(an_hour=fall.fastest or fall.an_hour) for fall in falls)


def slowest(falls: tuple[Fall, ...]) -> tuple[Fall, ...]:
    """The curve of an oven that loses as little as its ranges say at least."""
    return tuple(fall._replace(an_hour=fall.slowest or fall.an_hour) for fall in falls)


class Window(NamedTuple):
    """From when to when an oven is as hot as a phase wants, in hours from the heat that its fire was let out at."""

    opens: Fraction
    closes: Fraction


def floor_heat(step: Step) -> Range | None:
    """The heat a phase begins at: the floor's where the file tells them apart, else the first."""
    heat = next((heat for heat in step.heats if heat.where == "floor"), next(iter(step.heats), None))
    return None if heat is None else heat.celsius


def wanted_heats(heat: Range) -> tuple[Fraction, Fraction]:
    """From what heat to what heat a phase may begin; `NEAR` to either side of a single figure or an open end."""
    least = heat.low if heat.low is not None else heat.likely - NEAR
    most = heat.high if heat.high is not None else heat.likely + NEAR
    return (least - NEAR, most + NEAR) if least == most else (least, most)


def window(falls: tuple[Fall, ...], heat: Range, fired_to: Fraction | None = None) -> Window | None:
    """When a phase of that heat may begin, in an oven fired to so many Celsius; None: to the hottest of its curve. None: the
    oven is never so hot."""
    least, most = wanted_heats(heat)
    closes = hours_to(falls, least)
    begins = NOTHING if fired_to is None else hours_to(falls, fired_to) or NOTHING
    if closes is None or closes < begins:
        return None
    return Window(max((hours_to(falls, most) or NOTHING) - begins, NOTHING), closes - begins)


def rising_phase(phases: Sequence[Step]) -> Step | None:
    """The first phase of a bake that an oven with its fire out cannot do: its heat is to rise, or it wants more than the
    phase before it, measured at the same place, may end at."""
    for phase in phases:
        if phase.ramp is not None and phase.ramp[0] == "rising":
            return phase
    for before, phase in pairwise(phases):
        had, wants = _measured(before), _measured(phase)
        if any(wanted_heats(wants[where])[0] > wanted_heats(had[where])[1] for where in had.keys() & wants.keys()):
            return phase
    return None


def _measured(phase: Step) -> dict[str, Range]:
    """Its heats by where they are measured."""
    return {heat.where: heat.celsius for heat in phase.heats}


def first_bakes(formula: Formula) -> Iterable[tuple[str, Step]]:
    """The first phase of each bread's bake: (noun, step). The noun is "" where the dough is not parted."""
    for noun, steps in formula.ways:
        first = next((step for step in steps if step.verb == "bake"), None)
        if first is not None:
            yield noun if formula.is_parted else "", first
