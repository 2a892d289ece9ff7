"""A lye bath stronger than any pretzel wants, and more dangerous: nothing is dipped into it."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.figures.composition.lye import bath_of, lye_in, strength_of
from manchet.figures.limits.lookup import limit

NAME = "lye-bath-strong"
ABOUT = ("class lye",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("lye-bath-most")
    if most is None:
        return
    for strength, place in _baths(work):
        if strength > most:
            message = (
                f"the bath is {percent(strength)} lye; 3 to 4% is usual, and over {percent(most)} nothing is dipped"
            )
            yield report(NAME, place, message, "check the decimal point; weigh the lye again before it is poured")


def _baths(work: Work) -> Iterator[tuple[Fraction, Place]]:
    """What is mixed here, at its lye; and what comes from the larder, where pieces go in. A bath of another file is told there."""
    formula = work.formula
    for stage in formula.stages:
        lye = next((p for p in stage.portions if lye_in(p.ingredient)), None)
        if lye is not None and (formula.preparation or stage is not formula.dough):
            yield strength_of(stage), lye.place
    for step in formula.steps:
        if step.applied is not None and step.applied.ingredient is not None:
            bath = bath_of(step, work)
            if bath is not None and bath.strength is not None:
                yield bath.strength, step.place
