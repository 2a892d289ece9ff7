"""More folds, turns or stirs than fit into the wait they are in."""

from collections.abc import Iterator

from manchet.checks.looking import all_steps
from manchet.checks.saying import duration, span
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error

NAME = "folds-longer-than-rest"


def check(subject: Subject) -> Iterator[Diagnostic]:
    for step in all_steps(subject.formula):
        if step.time is None or step.time.high is None:
            continue
        for folds in step.folds:
            last = folds.number * folds.seconds
            if last <= step.time.high:
                continue
            yield error(
                NAME,
                step.place,
                f"the last {folds.work} would come after {duration(last)}, and `{step.verb}` lasts {span(step.time)}",
                f"fewer {folds.work}s, or closer together, or a longer `{step.verb}`",
            )
