"""A bread of much rye cut too soon: its crumb needs a night to set."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads, cools_bread, longest
from manchet.checks.saying import duration, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import CHILLS

NAME = "rye-cooling-short"
ABOUT = ("class rye flour",)


def check(work: Work) -> Iterator[Diagnostic]:
    much, least = limit("rye-much"), limit("rye-cooling-least")
    rye = work.totals.rye
    if much is None or least is None or rye < much:
        return
    for _, steps in breads(work.formula):
        baked = max((i for i, step in enumerate(steps) if step.verb == "bake"), default=len(steps))
        cools = [step for step in steps[baked + 1 :] if cools_bread(step) and step.verb not in CHILLS]
        if cools and longest(cools) < least:
            message = (
                f"{percent(rye)} rye and only {duration(longest(cools))} to cool: the crumb smears under the knife"
            )
            yield report(NAME, cools[-1].place, message, f"give it {duration(least)} or more before it is cut")
