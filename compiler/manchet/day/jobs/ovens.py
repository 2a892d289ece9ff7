"""The ovens of a kitchen as a day has them, and what each load asks of one."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import ceil

from manchet.day.clock import minutes_down, minutes_up
from manchet.day.jobs.values import OvenTurn
from manchet.day.model import CurvePoint, DayOven, HeatSpan
from manchet.figures.oven.curve import floor_heat, heat_at, hours_to, wanted_heats
from manchet.figures.oven.loading_plan import drop_of
from manchet.formula.model import Range, Step
from manchet.kitchen.model import Oven
from manchet.syntax.vocabulary import HOLDS_PIECE

COLDEST = Fraction(60)
"""Celsius down to which a curve is drawn: nothing is baked below. Our own rule."""
HOUR = 60
NOTHING = Fraction(0)


def day_oven(oven: Oven) -> DayOven:
    mouth = oven.mouth
    return DayOven(
        oven.name,
        oven.decks or 1,
        minutes_down(oven.loads_within or NOTHING),
        minutes_up(oven.recovers or NOTHING),
        oven.climbs,
        oven.sinks,
        _curve(oven),
        0 if mouth is None else minutes_down(mouth.start),
        0 if mouth is None else minutes_up(mouth.end),
    )


def _curve(oven: Oven) -> tuple[CurvePoint, ...]:
    if not oven.falls:
        return ()
    hours = [hours_to(oven.falls, fall.start) or NOTHING for fall in oven.falls]
    points = [
        CurvePoint(at * HOUR, fall.start) for at, fall in zip(hours, oven.falls, strict=True) if fall.start > COLDEST
    ]
    end = hours_to(oven.falls, COLDEST)
    return (*points, CurvePoint((end or NOTHING) * HOUR, COLDEST))


def enters(load: OvenTurn) -> HeatSpan | None:
    """The floor it may go in at: as far from a single figure as anywhere else (`figures.oven.curve`)."""
    return _span(_heat(load.phases[0]))


def leaves(load: OvenTurn) -> HeatSpan | None:
    """What the oven is set to when it comes out."""
    last = next((step for step in reversed(load.phases) if step.heats or step.ramp), load.phases[0])
    return _span(last.ramp[1] if last.ramp is not None else _heat(last))


def _heat(step: Step) -> Range | None:
    return floor_heat(step) or (step.ramp[1] if step.ramp is not None else None)


def _span(heat: Range | None) -> HeatSpan | None:
    if heat is None:
        return None
    low, high = wanted_heats(heat)
    is_one_figure = heat.low is not None and heat.low == heat.high
    return HeatSpan(low, high, (high - low) / 2 if is_one_figure else Fraction(0))


def extra_minutes(load: OvenTurn, oven: Oven, full: Fraction, stays: int) -> int:
    """Minutes of its curve that a falling oven loses to a load beyond the minutes it stays: the degrees that the load takes,
    over the slope where it goes in. `full`: grams of the heaviest load of the day."""
    drop, heat = drop_of(oven, load.grams, full), enters(load)
    if not oven.falls or not drop or heat is None:
        return 0
    begins = hours_to(oven.falls, min(heat.high, oven.falls[0].start)) or NOTHING
    left = heat_at(oven.falls, begins) - drop
    lost = ((hours_to(oven.falls, left) or begins) - begins) * HOUR
    return max(ceil(lost) - stays, 0)


def heaviest(loads: Sequence[OvenTurn]) -> Fraction:
    return max((load.grams for load in loads), default=NOTHING)


def at_the_mouth(load: OvenTurn) -> bool:
    """Food may stand at an oven's mouth while it heats; a bread may not."""
    return load.phases[0].verb not in HOLDS_PIECE
