"""How long a load is in its oven, and what somebody has to do there meanwhile."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.day.jobs import estimates
from manchet.day.jobs.timing import length_alone
from manchet.kitchen.model import Oven
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN
from manchet.timing.jobs.durations import inside, is_attended
from manchet.timing.jobs.loads import Doing

NOTHING = Fraction(0)
AT_ONCE = Fraction(3 * 60)
"""Seconds after loading within which nobody leaves the oven: what is to be done by then is no moment of its own."""


class OvenEvent(NamedTuple):
    """Somebody has to be at the oven, `seconds` after the pieces went in, for as long as it `lasts`."""

    does: str
    seconds: Fraction
    lasts: Fraction


def seconds_in_oven(phases: Sequence[Doing], work: Work) -> Fraction:
    """From the last piece in to the first one out, as planned: all phases, and the work of the hand between them."""
    return sum((_seconds(doing, work) for doing in phases), NOTHING)


def _seconds(doing: Doing, work: Work) -> Fraction:
    is_in_it = doing.step.verb in IN_OVEN or is_attended(doing.step)
    return length_alone(doing, work).planned if is_in_it else NOTHING


def events_of(phases: Sequence[Doing], work: Work, oven: Oven | None) -> Iterator[OvenEvent]:
    """What is done between two phases or inside one, later than `AT_ONCE`. A falling oven needs nobody to set its heat."""
    at, lasts = NOTHING, Fraction(estimates.AT_THE_OVEN)
    for number, doing in enumerate(phases):
        if doing.step.verb in IN_OVEN:
            falls = oven is not None and bool(oven.falls)
            if number and doing.step.heats and not falls and phases[number - 1].step.verb in IN_OVEN:
                yield OvenEvent("set the heat", at, lasts)
            for event in inside(doing.step):
                if at + event.after > AT_ONCE:
                    yield OvenEvent(event.work, at + event.after, lasts)
        elif is_attended(doing.step):
            yield OvenEvent(doing.step.verb, at, _seconds(doing, work))
        at += _seconds(doing, work)
