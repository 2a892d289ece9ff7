"""Egg brushed or spread on bread that no heat follows: it is eaten raw."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads, is_raw_egg
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import COOKS

NAME = "raw-egg-on-baked"
ABOUT = ("applied",)


def check(work: Work) -> Iterator[Diagnostic]:
    said = set()
    for noun, steps in breads(work.formula):
        last = max((n for n, step in enumerate(steps) if step.verb in COOKS), default=len(steps))
        for step in steps[last + 1 :]:
            if step.applied is not None and is_raw_egg(step.applied) and step.place not in said:
                said.add(step.place)
                message = f"{step.applied.name} goes on {bread(noun)} after the last heat, and stays raw"
                help = "brush it on before the bake, or use a syrup, butter or pasteurised egg that says so"
                yield report(NAME, step.place, message, help)
