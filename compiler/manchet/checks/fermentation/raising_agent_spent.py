"""Baking powder or soda in a dough without yeast that is left to ferment: its gas is gone before the oven."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads, is_alive, of_verbs
from manchet.checks.saying import span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import COOKS, RISES_WARM

NAME = "raising-agent-spent"
ABOUT = ("class raising agent",)


def check(work: Work) -> Iterator[Diagnostic]:
    longest = limit("raising-agent-waits-longest")
    if longest is None or is_alive(work.dough.stage, work.formula):
        return
    for _, steps in breads(work.formula):
        heat = next((n for n, step in enumerate(steps) if step.verb in COOKS), len(steps))
        for step in of_verbs(steps[:heat], *RISES_WARM):
            if step.time is None or step.time.likely <= longest:
                continue
            message = f"`{step.verb}` for {span(step.time)}, and nothing alive is in it: the raising agent's gas is gone by then"
            yield report(NAME, step.place, message, "leave the line out and bake it soon, or add yeast")
            return
