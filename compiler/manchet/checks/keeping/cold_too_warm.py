"""A chill or a freeze at a temperature that chills or freezes nothing."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import CHILLS

NAME = "cold-too-warm"
ABOUT = ("chills",)


def check(work: Work) -> Iterator[Diagnostic]:
    for step in work.formula.steps:
        most = limit(f"{step.verb}-warmest") if step.verb in CHILLS else None
        if most is None or not step.heats or step.heats[0].celsius.likely <= most:
            continue
        message = f"`{step.verb}` at {degrees(work.kitchen, step.heats[0].celsius.likely)}; over {degrees(work.kitchen, most)} it does not {step.verb}"
        yield report(NAME, step.place, message, "check the figure and its unit")
