"""Baking minutes, all phases together, that cannot heat a piece of this weight through."""

from collections.abc import Iterator
from fractions import Fraction
from math import isqrt

from manchet.batch.work import Work
from manchet.checks.looking import longest, of_verbs
from manchet.checks.saying import duration, grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "bake-too-short"
ABOUT = ("verb bake",)


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("bake-least-for-500-g", work.kind)
    if least is None:
        return
    heaviest = limit("piece-most", work.kind)
    pieces = {piece.noun: piece.grams for piece in work.batch.pieces}
    for noun, steps in work.formula.ways:
        weight = pieces.get(noun)
        bakes = list(of_verbs(steps, "bake"))
        if (
            weight is None
            or (heaviest is not None and weight > heaviest)
            or not bakes
            or any(step.time is None or step.per == "side" for step in bakes)
        ):
            continue
        needed = least * Fraction(isqrt(int(weight / 500 * 10**6)), 1000)
        taken = longest(bakes)
        if taken < needed:
            message = (
                f"{duration(taken)} in the oven for a piece of {grams(weight)}: "
                f"its middle needs {duration(needed)} at least"
            )
            yield report(NAME, bakes[0].place, message, "check the minutes and at the weight of a piece")
