"""A chill or a freeze at a temperature that chills or freezes nothing."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import all_steps
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "cold-too-warm"


def check(subject: Subject) -> Iterator[Diagnostic]:
    for step in all_steps(subject.formula):
        most = limit(f"{step.verb}-warmest") if step.verb in ("chill", "freeze") else None
        if most is None or not step.heats or step.heats[0].celsius.likely <= most:
            continue
        yield warning(
            NAME,
            step.place,
            f"`{step.verb}` at {subject.degrees(step.heats[0].celsius.likely)}; over {subject.degrees(most)} it does not {step.verb}",
            "look at the figure and its unit",
        )
