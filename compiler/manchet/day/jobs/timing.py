"""How long a step takes one pair of hands, and how long a wait may be."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.day.jobs import estimates
from manchet.day.jobs.values import MomentPart
from manchet.formula.model import Step, Who
from manchet.timing.jobs.durations import Length, length_of
from manchet.timing.jobs.handling import Handling
from manchet.timing.jobs.loads import Doing
from manchet.timing.jobs.usual_times import WAITS

NOTHING = Fraction(0)


def length_alone(doing: Doing, work: Work) -> Length:
    """As one pair of hands does it: whoever else is there may be at another bread."""
    return length_of(doing.step, doing.pieces, work.kitchen, 1, work.mixes.mixer)


def part_of(doing: Doing, work: Work) -> MomentPart:
    """A step of hand or machine."""
    step, length = doing.step, length_alone(doing, work)
    is_machine = step.who is Who.MACHINE
    return MomentPart(step, step.verb, length.planned, doing.pieces, length.is_estimate, is_machine, length.by_piece)


def part_beside(one: Handling, pieces: Fraction = NOTHING) -> MomentPart:
    """What no file writes as a step."""
    return MomentPart(None, one.does, one.seconds, pieces, one.is_estimate, by_piece=pieces > 1)


def said_range(step: Step) -> tuple[Fraction, Fraction | None]:
    """Seconds that a wait takes at least and at most; None for an open end. A single figure may be stretched a little."""
    if step.time is None:
        return Fraction(WAITS[0]), Fraction(WAITS[1])
    low, high = step.time.low, step.time.high
    if low is None:
        return NOTHING, high
    if high is not None and high == low:
        high = low + max(Fraction(estimates.STRETCH), low * estimates.STRETCH_PART)
    return low, high
