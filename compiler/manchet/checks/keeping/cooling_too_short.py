"""A bread that is given a few minutes to cool and no more: often minutes where hours were meant."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads, cools_bread, longest
from manchet.checks.saying import duration
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "cooling-too-short"
ABOUT = ("verb cool",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, much = limit("bread-cools-shortest", work.kind), limit("rye-much")
    if least is None or much is None or work.totals.rye >= much:
        return
    seen = set()
    for _, steps in breads(work.formula):
        baked = max((at for at, step in enumerate(steps) if step.verb == "bake"), default=len(steps))
        cools = [step for step in steps[baked + 1 :] if cools_bread(step) and step.time is not None]
        if cools and longest(cools) < least and cools[-1].place not in seen:
            seen.add(cools[-1].place)
            message = f"only {duration(longest(cools))} to cool: out of the oven it is still setting"
            yield report(NAME, cools[-1].place, message, "check the unit: min, or h?")
