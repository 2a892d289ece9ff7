"""A loaf that goes from the oven to nowhere: it must cool before it is cut or wrapped."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import cools_bread
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "cooling-missing"
ABOUT = ("a loaf",)


def check(work: Work) -> Iterator[Diagnostic]:
    if not work.bread.loaf:
        return
    for noun, steps in work.formula.ways:
        last = max((i for i, step in enumerate(steps) if step.verb == "bake"), default=None)
        if last is None or any(cools_bread(step) for step in steps[last + 1 :]):
            continue
        message = f"no step says how long to cool {bread(noun)}"
        yield report(NAME, steps[last].place, message, "add a line such as `cool 2 h` after the bake")
