"""A poolish, biga, levain or sour left so long and so warm that it has fallen and gone sharp."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.fermentation.hours_for_minutes import too_long
from manchet.checks.saying import degrees, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import MADE_TO_RIPEN

NAME = "preferment-over-ripe"
ABOUT = ("verb ripen",)


def check(work: Work) -> Iterator[Diagnostic]:
    long, warm = limit("ripen-warm-longest"), limit("ripen-warm-from")
    if long is None or warm is None or work.kind == "batter":
        return
    for stage in work.formula.stages:
        if stage.word not in MADE_TO_RIPEN or stage.from_nothing:
            continue
        for step in stage.steps:
            if (
                step.verb != "ripen"
                or step.time is None
                or not step.heats
                or step.ramp is not None
                or too_long(work, step)
            ):
                continue
            if step.time.likely > long and step.heats[0].celsius.likely >= warm:
                message = (
                    f"{stage.name} ripens {span(step.time)} at {degrees(work.kitchen, step.heats[0].celsius.likely)} "
                    "and will be past its best"
                )
                yield report(NAME, step.place, message, "make it shorter or cooler, or take less seed")
