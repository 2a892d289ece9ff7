"""A kind that promises something the steps never do: boiled but never boiled, laminated but nothing locked in."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "kind-without-its-step"
ABOUT = ("named after a step",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    verbs = {step.verb for step in formula.steps}
    if not formula.bread.done_by or not verbs or verbs & {*formula.bread.done_by, "do"}:
        return
    message = f"{formula.name} is of kind {formula.kind}, but no step does it"
    yield report(NAME, formula.place, message, f"add a line such as `{formula.bread.done_as}`, or change the kind")
