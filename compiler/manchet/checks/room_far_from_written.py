"""A levain or poolish set for a room much warmer or colder than the kitchen says, and no prover to put it in."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.looking import PREFERMENTS, SOURS
from manchet.checks.saying import span
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note
from manchet.figures.fermentation import Waiting, leavens_of
from manchet.formula.model import Range, Stage, Step
from manchet.quantities.printing import rounded

NAME = "room-far-from-written"

HALF_HOUR = 1800
"""Seconds to which such an estimate is said."""


def check(subject: Subject) -> Iterator[Diagnostic]:
    air, most, coldest = subject.kitchen.air, limit("room-difference"), limit("room-from")
    if air is None or most is None or coldest is None:
        return
    if any(cold.word == "prover" for cold in subject.kitchen.colds):
        return
    for stage in subject.formula.stages:
        if stage.word not in PREFERMENTS | SOURS:
            continue
        for step in stage.steps:
            if step.verb != "ripen" or not step.heats or step.ramp is not None or step.where is not None:
                continue
            written = step.heats[0].celsius
            low = written.low if written.low is not None else written.likely
            high = written.high if written.high is not None else written.likely
            if low < coldest or low - most <= air <= high + most:
                continue
            yield note(
                NAME,
                step.place,
                f"{stage.name} ripens at {subject.degrees(written.likely)}, and {subject.kitchen.name} is at {subject.degrees(air)}",
                "say where it stands (`in …`), or write the time for the room as it is"
                + _there(subject, stage, step, air),
            )


def _there(subject: Subject, stage: Stage, step: Step, air: Fraction) -> str:
    """About how long that is, where the model of warmth holds."""
    leavens = leavens_of(stage, subject.formula)
    there = Waiting(stage.name, step, step.time, leavens).at(air) if step.time is not None and leavens else None
    if there is None:
        return ""
    low, high = (rounded((end or Fraction(0)) / HALF_HOUR, 0) * HALF_HOUR for end in there.seconds)
    return f": about {span(Range(low, high))} at {subject.degrees(air)}, by an estimate"
