"""Less dough than the smallest mixer can take hold of."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "dough-under-mixer"
ABOUT = ("kitchen mixer",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    mixers = [m for m in work.kitchen.mixers if m.least_grams is not None]
    if work.formula.preparation or not mixers or len(mixers) < len(work.kitchen.mixers):
        return
    first = next((s for s in of_verbs(work.dough.stage.steps, "mix") if "by hand" not in s.manner), None)
    smallest = min(mixers, key=lambda m: m.least_grams or 0)
    if first is None or smallest.least_grams is None or work.batch.dough >= smallest.least_grams:
        return
    message = f"{grams(work.batch.dough)} of dough; {smallest.name} needs {grams(smallest.least_grams)} to take hold"
    yield report(NAME, first.place, message, "make more, or mix by hand")
