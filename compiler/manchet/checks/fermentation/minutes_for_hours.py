"""A step far shorter than such a step can be: often minutes where hours were meant."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import duration, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step
from manchet.syntax.vocabulary import MAY_RIPEN_FAST

NAME = "minutes-for-hours"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    for stage in formula.stages:
        for step in stage.steps:
            quick = stage.word in MAY_RIPEN_FAST
            yield from _short(work, step, "sponge-ripen-shortest" if step.verb == "ripen" and quick else "")
    for branch in formula.branches:
        for step in branch.steps:
            yield from _short(work, step, "")


def _short(work: Work, step: Step, key: str) -> Iterator[Diagnostic]:
    hot = bool(step.heats) and step.heats[0].celsius.likely >= 280
    least = None if step.verb == "bake" and hot else limit(key or f"{step.verb}-shortest", work.kind)
    if step.time is None or step.time.high is None or least is None or step.time.high >= least or step.per:
        return
    message = f"`{step.verb}` for only {span(step.time)}: under {duration(least)} it does little"
    yield report(NAME, step.place, message, "check the unit: min, or h?")
