"""A tin loaf that is never put in a tin, so that no sheet can say which."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import HOLDS_PIECE

NAME = "tin-not-named"
ABOUT = ("a tin loaf",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if not formula.bread.tin or any(makes.tin for makes in formula.makes):
        return
    ways = formula.ways
    baked = [step for _, steps in ways for step in steps if step.verb == "bake"]
    if not baked or any(step.where for _, steps in ways for step in steps if step.verb in HOLDS_PIECE):
        return
    message = f"{formula.name} is a tin loaf, and nothing says which tin"
    yield report(NAME, baked[0].place, message, "add a line such as `place in long tin` before it proves")
