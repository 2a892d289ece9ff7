"""A bread of a kind that is baked, with steps but no heat among them."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import COOKS, FOR_OVEN

NAME = "never-baked"
ABOUT = ("unbaked",)


def check(work: Work) -> Iterator[Diagnostic]:
    if not work.bread.baked:
        return
    for noun, steps in work.formula.ways:
        verbs = {step.verb for step in steps}
        if verbs & FOR_OVEN and not verbs & COOKS and "do" not in verbs and "freeze" not in verbs:
            help = "add a line such as `bake 40 min at 230 C`"
            yield report(NAME, steps[-1].place if steps else work.formula.place, f"no step bakes {bread(noun)}", help)
