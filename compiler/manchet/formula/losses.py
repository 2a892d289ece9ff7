"""What bread loses is said in one place: in the head as a bake loss, or at the bake and the cooling themselves."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.model import Formula
from manchet.formula.percents import percent
from manchet.formula.what_goes import LossOf, loss_of
from manchet.syntax.vocabulary import COOKS


def loss_reports(formula: Formula) -> Iterator[Diagnostic]:
    """A report where the head's bake loss stands beside a loss from the first heat on. What is cut off is apart, before it or after."""
    if formula.bake_loss is None:
        return
    said = set()
    for noun, steps in formula.ways:
        heat = next((n for n, step in enumerate(steps) if step.verb in COOKS), len(steps))
        for step in formula.losing_steps(noun):
            if step not in steps[heat:] or step.place in said or loss_of(step) is LossOf.STUFF:
                continue
            said.add(step.place)
            loss = percent(step.loses or formula.bake_loss * 0)
            message = f"`{step.verb}` loses {loss}, and the head has a bake loss of {percent(formula.bake_loss)}: which of the two?"
            help = "leave the `bake loss` out of the head, or the `loses` out of the step"
            yield report("bake-loss-twice", step.place, message, help)
