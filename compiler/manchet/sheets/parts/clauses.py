"""A step as a clause of a line: what is done and how long in bold, on what conditions after it."""

from __future__ import annotations

from typing import Literal

from manchet.formula.model import Step, Who
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.views import StepClause
from manchet.syntax.vocabulary import COLD, IN_OVEN

Worker = Literal["hands", "machine", "left alone", "cold", "oven"]


def clause_of(step: Step, m: Measures, moved: str = "", letter: str = "") -> StepClause:
    """`moved`: what the step moves, said with its weight, where it has no row of its own; `letter`: what that stands under."""
    minutes = " ".join(wording.how_long(step, m))
    with_what, each = wording.what_is_applied(step, m)
    said = [*wording.manner(step, m), *wording.additions(step, m), with_what, *wording.place(step, m), moved]
    said.append(m.words["say.optional"] if step.optional else "")
    return StepClause(
        by=worked_by(step),
        verb=step.verb,
        doing=wording.opening(step, m),
        letter=letter,
        object=" ".join(part for part in said if part),
        minutes="" if step.per else minutes,
        rest=_conditions(step, each, minutes if step.per else "", m),
        counts=wording.counts(step, m),
    )


def _conditions(step: Step, each: str, minutes: str, m: Measures) -> str:
    """`: two long cuts`, `, 6 g each`, ` at 5 °C until it stretches`: with the sign that parts them from what is done."""
    told = " ".join(part for part in (minutes, wording.around_to(step, m)) if part)
    beside = ", ".join(part for part in (told, *wording.more(step, m)) if part)
    how = f": {step.how}" if step.how and step.verb != "do" else ""
    end = " ".join(part for part in (beside, wording.look(step, m)) if part)
    return how + (f", {each}" if each else "") + (f" {end}" if end else "")


def worked_by(step: Step) -> Worker:
    """Who or what is at work: an oven bakes, a cold room chills, and what else is waited for is left alone."""
    if step.verb in IN_OVEN:
        return "oven"
    if step.verb in COLD:
        return "cold"
    return {Who.HANDS: "hands", Who.MACHINE: "machine", Who.WAITING: "left alone"}[step.who]  # type: ignore[return-value]
