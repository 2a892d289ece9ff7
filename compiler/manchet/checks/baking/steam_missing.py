"""A crusty loaf baked with no steam and no lid: its skin sets before it has grown."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "steam-missing"
ABOUT = ("kind hearth loaf",)


def check(work: Work) -> Iterator[Diagnostic]:
    if work.kind != "hearth loaf":
        return
    for noun, steps in work.formula.ways:
        bakes = list(of_verbs(steps, "bake"))
        if not bakes or any(step.steam or step.lid is not None for step in bakes):
            continue
        message = f"neither steam nor a lid for {bread(noun)}"
        yield report(NAME, bakes[0].place, message, "add `, steam` to the first bake line (or `, lid on` in a pot)")
