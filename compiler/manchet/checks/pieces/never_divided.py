"""Many pieces from a dough that no step divides."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import LOAVES, all_steps
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "never-divided"
ABOUT = ("undivided",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if formula.kind not in LOAVES | {"rolls", "soft", "boiled", "lye"}:
        return
    number = sum((makes.number or 1 for makes in formula.makes), 0)
    verbs = {step.verb for step in all_steps(formula)}
    if number <= 1 or not verbs or verbs & {"divide", "cut", "do"}:
        return
    message = f"{number} pieces are wanted, and no step divides the dough"
    yield report(NAME, formula.makes[0].place, message, "add `divide` where the dough is weighed off")
