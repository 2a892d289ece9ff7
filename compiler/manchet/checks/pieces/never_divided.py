"""Many pieces from a dough that no step divides."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import DIVIDES

NAME = "never-divided"
ABOUT = ("undivided",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if not formula.bread.divided:
        return
    number = sum((makes.number or 1 for makes in formula.makes), 0)
    verbs = {step.verb for step in formula.steps}
    if number <= 1 or not verbs or verbs & (DIVIDES | {"do"}):
        return
    message = f"{number} pieces are wanted, and no step divides the dough"
    yield report(NAME, formula.makes[0].place, message, "add `divide` where the dough is weighed off")
