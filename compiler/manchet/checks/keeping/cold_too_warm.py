"""A chill or a freeze at a temperature that chills or freezes nothing."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import all_steps
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "cold-too-warm"
ABOUT = ("verb chill", "verb freeze")


def check(work: Work) -> Iterator[Diagnostic]:
    for step in all_steps(work.formula):
        most = limit(f"{step.verb}-warmest") if step.verb in ("chill", "freeze") else None
        if most is None or not step.heats or step.heats[0].celsius.likely <= most:
            continue
        message = f"`{step.verb}` at {degrees(work.kitchen, step.heats[0].celsius.likely)}; over {degrees(work.kitchen, most)} it does not {step.verb}"
        yield report(NAME, step.place, message, "look at the figure and its unit")
