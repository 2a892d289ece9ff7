"""A dough left to rise for a short while where it does not, and is not meant to be held back: often another unit, or a slipped point."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import in_fahrenheit_by_its_line
from manchet.checks.saying import celsius, degrees, fahrenheit, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step
from manchet.syntax.vocabulary import FERMENTS

NAME = "fermentation-too-cold"
ABOUT = ("ferments",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, long, frozen = limit("rises-least"), limit("rises-cold-from"), limit("dough-freezes")
    if least is None or long is None or frozen is None:
        return
    for step in work.formula.steps:
        if step.verb not in FERMENTS or not step.heats or step.ramp is not None or step.time is None:
            continue
        warmth = step.heats[0].celsius.likely
        said = fahrenheit(warmth) if in_fahrenheit_by_its_line(step) else degrees(work.kitchen, warmth)
        if warmth <= frozen:
            yield report(NAME, step.place, f"`{step.verb}` at {said}: a dough is frozen there", _meant(step, warmth))
        elif warmth < least and step.time.likely < long and step.verb != "retard":
            message = f"`{step.verb}` for {span(step.time)} at {said}: so cold a dough hardly rises"
            yield report(NAME, step.place, message, _meant(step, warmth))


def _meant(step: Step, warmth: Fraction) -> str:
    """The figure in the other unit, or with its point one place on, where dough rises at that."""
    if step.verb == "retard":
        return "a fridge keeps 2 to 8 C: check the figure and its unit"
    low, high = limit("rises-usual-least"), limit("rises-usual-most")
    meant = warmth * 9 / 5 + 32 if in_fahrenheit_by_its_line(step) else warmth * 10
    if low is not None and high is not None and low <= meant <= high:
        return f"did you mean {celsius(meant)}? check the figure and its unit"
    return "write how warm it is where the dough stands, or `retard` if it is to be held back"
