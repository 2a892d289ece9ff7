"""A step that takes far longer than such a step can: often hours where minutes were meant."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import all_steps
from manchet.checks.saying import duration, span
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "hours-for-minutes"


def check(subject: Subject) -> Iterator[Diagnostic]:
    for step in all_steps(subject.formula):
        most = limit(f"{step.verb}-longest", subject.kind)
        if step.time is None or step.time.low is None or most is None or step.time.low <= most or step.per == "each":
            continue
        yield warning(
            NAME,
            step.place,
            f"`{step.verb}` for {span(step.time)}: no more than {duration(most)} is known",
            "look at the unit: h, or min?",
        )
