"""A levain, a poolish or a dough set for a room much warmer or colder than the kitchen says, and no prover to put it in."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import degrees, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.fermentation.another_warmth import Waiting, leavens_of
from manchet.figures.limits.lookup import limit
from manchet.figures.water.mix_temperature import no_water_does_it
from manchet.formula.model import Range, Stage, Step
from manchet.quantities.printing import round_to
from manchet.syntax.vocabulary import BY_LEAVEN, MADE_TO_RIPEN, RISES_WARM

NAME = "room-far-from-written"
ABOUT = ("kitchen air",)

HALF_HOUR = 1800
"""Seconds to which such an estimate is said."""


def check(work: Work) -> Iterator[Diagnostic]:
    air, of_dough, coldest = work.kitchen.air, limit("room-difference-of-a-dough"), limit("room-from")
    of_preferment, of_proof = limit("room-difference"), limit("room-difference-of-a-proof")
    if air is None or of_proof is None or of_preferment is None or of_dough is None or coldest is None:
        return
    if any(cold.word == "prover" for cold in work.kitchen.colds):
        return
    told = False
    for stage in work.formula.stages:
        is_dough = stage is work.formula.dough
        for step in stage.steps:
            most = of_preferment if not is_dough else of_proof if step.verb == "prove" else of_dough
            if step.verb not in _waits_of(stage, is_dough) or (told and is_dough):  # one room, and one cause
                continue
            if not step.heats or step.ramp is not None or step.where is not None:
                continue
            written = step.heats[0].celsius
            low = written.low if written.low is not None else written.likely
            high = written.high if written.high is not None else written.likely
            if low < coldest or low - most <= air <= high + most:
                continue
            if is_dough and air > high:  # in a hot room nobody overlooks it: the dough is seen to run away
                continue
            if is_dough and no_water_does_it(work):
                return
            told = True
            does = {"ferment": "ferments", "prove": "proves"}.get(step.verb, "ripens")
            message = f"{stage.name} {does} at {degrees(work.kitchen, written.likely)}, and {work.kitchen.name} is at {degrees(work.kitchen, air)}"
            help = "say where it stands (`in …`), or write the time for the room as it is" + _there(
                work, stage, step, air
            )
            yield report(NAME, step.place, message, help)


def _waits_of(stage: Stage, is_dough: bool) -> frozenset[str]:
    """What a stage does that stands in the room; nothing, of one that is no preferment and no dough."""
    if is_dough:
        return RISES_WARM
    return BY_LEAVEN - RISES_WARM if stage.word in MADE_TO_RIPEN else frozenset()


def _there(work: Work, stage: Stage, step: Step, air: Fraction) -> str:
    """About how long that is, where the model of warmth holds."""
    leavens = leavens_of(stage, work.formula)
    there = Waiting(stage.name, step, step.time, leavens).at(air) if step.time is not None and leavens else None
    if there is None:
        return ""
    low, high = (round_to((end or Fraction(0)) / HALF_HOUR, 0) * HALF_HOUR for end in there.seconds)
    return f": about {span(Range(low, high))} at {degrees(work.kitchen, air)}, by an estimate"
