"""A bread of a kind that is baked, with steps but no heat among them."""

from collections.abc import Iterator

from manchet.checks.looking import HEATING, LOAVES, breads
from manchet.checks.saying import bread
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "never-baked"
SHAPED = {"divide", "shape", "prove"}
"""Steps that say that the way to the oven is written down."""

BAKED = LOAVES | {"rolls", "soft", "laminated", "filled", "boiled", "lye", "gluten-free", "crisp", "biscuit"}


def check(subject: Subject) -> Iterator[Diagnostic]:
    if subject.kind not in BAKED:
        return
    for noun, steps in breads(subject.formula):
        verbs = {step.verb for step in steps}
        if verbs & SHAPED and not verbs & HEATING and not verbs & {"do", "freeze"}:
            yield warning(
                NAME,
                steps[-1].place if steps else subject.formula.place,
                f"no step bakes {bread(noun)}",
                "add a line such as `bake 40 min at 230 C`",
            )
