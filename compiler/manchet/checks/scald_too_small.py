"""A scald so small that it dries out or cools before it has set."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.saying import grams
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note

NAME = "scald-too-small"


def check(subject: Subject) -> Iterator[Diagnostic]:
    least = limit("scald-weight-least")
    if least is None:
        return
    for batch in subject.batch.stages:
        if batch.stage.word == "scald" and 0 < batch.into < least:
            yield note(
                NAME,
                batch.stage.place,
                f"{batch.stage.name} is only {grams(batch.into)}: it dries out and cools before it has set",
                "make more and keep the rest cold, or make a larger order",
            )
