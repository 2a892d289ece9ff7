"""How long a step takes one pair of hands, and how long a wait may be."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.day.jobs import estimates
from manchet.day.jobs.values import MomentPart
from manchet.formula.model import Step, Who
from manchet.syntax.vocabulary import BOILS
from manchet.timing.jobs.durations import length_of
from manchet.timing.jobs.loads import Doing

NOTHING = Fraction(0)


def is_attended(step: Step) -> bool:
    """Somebody is there: what boils is over when its time is, and is not left alone."""
    return step.who is not Who.WAITING or step.verb in BOILS


def part_of(doing: Doing, work: Work) -> MomentPart:
    """A step of hand or machine, as one pair of hands does it; by an estimate where nobody says how long it takes."""
    step, kitchen = doing.step, work.kitchen._replace(hands=1)
    length = length_of(step, doing.pieces, kitchen, work.mixes.mixer)
    seconds = length.planned if length.timed else estimates.seconds_of(step.verb, doing.pieces)
    by_piece = doing.pieces > 1 and (step.per == "each" or step.time is None) and step.who is Who.HANDS
    return MomentPart(step, step.verb, seconds, doing.pieces, not length.timed, step.who is Who.MACHINE, by_piece)


def said_range(step: Step) -> tuple[Fraction, Fraction | None]:
    """Seconds that a wait takes at least and at most; None for an open end. A single figure may be stretched a little."""
    if step.time is None:
        return Fraction(estimates.COOLS_FOR[0]), Fraction(estimates.COOLS_FOR[1])
    low, high = step.time.low, step.time.high
    if low is None:
        return NOTHING, high
    if high is not None and high == low:
        high = low + max(Fraction(estimates.STRETCH), low * estimates.STRETCH_PART)
    return low, high
