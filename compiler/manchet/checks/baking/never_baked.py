"""A bread of a kind that is baked, with steps but no heat among them."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import HEATING, LOAVES, breads
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "never-baked"
ABOUT = ("unbaked",)
SHAPED = {"divide", "shape", "prove"}
"""Steps that say that the way to the oven is written down."""

BAKED = LOAVES | {"rolls", "soft", "laminated", "filled", "boiled", "lye", "gluten-free", "crisp", "biscuit"}


def check(work: Work) -> Iterator[Diagnostic]:
    if work.kind not in BAKED:
        return
    for noun, steps in breads(work.formula):
        verbs = {step.verb for step in steps}
        if verbs & SHAPED and not verbs & HEATING and not verbs & {"do", "freeze"}:
            help = "add a line such as `bake 40 min at 230 C`"
            yield report(NAME, steps[-1].place if steps else work.formula.place, f"no step bakes {bread(noun)}", help)
