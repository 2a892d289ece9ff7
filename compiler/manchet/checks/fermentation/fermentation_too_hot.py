"""Yeast or a sour left to work at a temperature that stops it: often degrees Fahrenheit."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import celsius
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import FERMENTS

NAME = "fermentation-too-hot"
ABOUT = ("ferments",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("fermentation-most", work.kind)
    if most is None:
        return
    for step in work.formula.steps:
        if step.verb not in FERMENTS or not step.heats:
            continue
        warmth = step.heats[0].celsius.likely
        if warmth > most:
            message = f"`{step.verb}` at {celsius(warmth)}: yeast stops working above {celsius(most)}"
            yield report(NAME, step.place, message, _meant(warmth, most))


def _meant(warmth: Fraction, most: Fraction) -> str:
    """Degrees Fahrenheit, or a nought too many, where one of them would be a warmth that yeast works at."""
    from_fahrenheit = (warmth - 32) * 5 / 9
    if from_fahrenheit <= most:
        return f"{celsius(warmth)[:-2]} F is {celsius(from_fahrenheit)}: write the unit you mean"
    if warmth / 10 <= most:
        return f"did you mean {celsius(warmth / 10)}? check the figure"
    return "write how warm it is where the dough stands"
