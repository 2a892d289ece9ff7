"""A tin loaf that is never put in a tin, so that no sheet can say which."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "tin-not-named"
ABOUT = ("kind tin loaf", "kind rye tin loaf")


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if formula.kind not in ("tin loaf", "rye tin loaf") or any(makes.tin for makes in formula.makes):
        return
    ways = list(breads(formula))
    baked = [step for _, steps in ways for step in steps if step.verb == "bake"]
    if not baked or any(step.where for _, steps in ways for step in steps if step.verb in ("place", "prove", "bake")):
        return
    message = f"{formula.name} is a tin loaf, and nothing says which tin"
    yield report(NAME, baked[0].place, message, "add a line such as `place in long tin` before it proves")
