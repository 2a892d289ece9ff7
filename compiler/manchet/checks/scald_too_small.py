"""A scald so small that it dries out or cools before it has set."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note
from manchet.figures.limits.lookup import limit

NAME = "scald-too-small"


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("scald-weight-least")
    if least is None:
        return
    for batch in work.batch.stages:
        if batch.stage.word == "scald" and 0 < batch.into < least:
            yield note(
                NAME,
                batch.stage.place,
                f"{batch.stage.name} is only {grams(batch.into)}: it dries out and cools before it has set",
                "make more and keep the rest cold, or make a larger order",
            )
