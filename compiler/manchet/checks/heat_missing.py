"""A bake, a roast, a griddle or a fryer with no temperature."""

from collections.abc import Iterator

from manchet.checks.looking import all_steps
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error

NAME = "heat-missing"
USUAL = {"bake": "220 C", "roast": "200 C", "griddle": "200 C", "fry": "175 C"}


def check(subject: Subject) -> Iterator[Diagnostic]:
    for step in all_steps(subject.formula):
        if step.verb in USUAL and not step.heats and step.ramp is None:
            yield error(
                NAME,
                step.place,
                f"`{step.verb}` has no temperature",
                f"say how hot it is around it, as in `{step.verb} … at {USUAL[step.verb]}`",
            )
