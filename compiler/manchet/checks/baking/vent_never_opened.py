"""A crusty loaf baked in steam to the end: the crust stays soft."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import likely, of_verbs
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "vent-never-opened"
ABOUT = ("a hearth loaf",)


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("vent-bake-least")
    if least is None or not work.bread.hearth:
        return
    for noun, steps in work.formula.ways:
        bakes = list(of_verbs(steps, "bake"))
        steamed = [step for step in bakes if step.steamed]
        if not steamed or likely(bakes) < least or any(step.opens_vent or step.lid is not None for step in bakes):
            continue
        message = f"steam for {bread(noun)}, and the vent is never opened"
        yield report(NAME, bakes[-1].place, message, "add `, vent open` to the last bake line")
