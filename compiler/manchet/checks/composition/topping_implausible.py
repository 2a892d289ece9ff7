"""More wash, dust or grease on a piece than stays on it: often grams for the whole tray given as `each`."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "topping-implausible"
ABOUT = ("applied",)


def check(work: Work) -> Iterator[Diagnostic]:
    pieces = {piece.noun: piece.grams for piece in work.batch.pieces}
    for noun, steps in breads(work.formula):
        weight = pieces.get(noun)
        for step in steps:
            most = limit(f"{step.verb}-on-piece-most")
            if most is None or weight is None or step.applied is None or not step.applied.each:
                continue
            if step.applied.grams <= most * weight:
                continue
            message = f"{grams(step.applied.grams)} {step.applied.name} on a piece of {grams(weight)}"
            yield report(NAME, step.place, message, "`each` is for one piece; for all of them together write `in all`")
