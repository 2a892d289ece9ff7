"""A long retard in a place too warm to hold the dough back."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "retard-too-warm"
ABOUT = ("verb retard",)


def check(work: Work) -> Iterator[Diagnostic]:
    most, long, hot = limit("retard-most"), limit("retard-long"), limit("fermentation-most", work.kind)
    if most is None or long is None or hot is None:
        return
    for step in work.formula.steps:
        if step.verb != "retard" or not step.heats or step.time is None:
            continue
        warmth = step.heats[0].celsius.likely
        if most < warmth <= hot and step.time.likely >= long:
            message = f"{span(step.time)} at {degrees(work.kitchen, warmth)}: the dough goes on fermenting and falls"
            yield report(NAME, step.place, message, f"keep it under {degrees(work.kitchen, most)}, or make it shorter")
