"""The last bake ends at a core too low for this kind: the crumb is still raw or gummy."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import breads, of_verbs
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "core-low"


def check(subject: Subject) -> Iterator[Diagnostic]:
    least = limit("core-least", subject.kind)
    if least is None:
        return
    for _, steps in breads(subject.formula):
        cores = [(step, r.value.likely) for step in of_verbs(steps, "bake") for r in step.reaches if r.what == "core"]
        if not cores:
            continue
        step, core = cores[-1]
        if core < least:
            yield warning(
                NAME,
                step.place,
                f"a core of {subject.degrees(core)} leaves a {subject.kind} raw inside; {subject.degrees(least)} is the least we know",
                "bake it on to a higher core, or look at the figure",
            )
