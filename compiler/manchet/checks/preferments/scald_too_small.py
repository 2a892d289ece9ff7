"""A scald so small that it dries out or cools before it has set."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "scald-too-small"
ABOUT = ("stage scald",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("scald-weight-least")
    if least is None:
        return
    for batch in work.batch.stages:
        if batch.stage.word == "scald" and 0 < batch.into < least:
            message = f"{batch.stage.name} is only {grams(batch.into)}: it dries out and cools before it has set"
            yield report(NAME, batch.stage.place, message, "make more and keep the rest cold, or make a larger order")
