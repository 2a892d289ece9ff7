"""A step that takes far longer than such a step can: often hours where minutes were meant."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import duration, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.fermentation.yeast_rate import BAKERS, holds, pace
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step
from manchet.quantities.printing import round_to
from manchet.syntax.vocabulary import PROVES, RISES_WARM

NAME = "hours-for-minutes"
ABOUT = ()

WARM = Fraction(27)
"""Celsius at which a proof's hours are counted."""


def longest(work: Work, step: Step) -> Fraction | None:
    """Seconds such a step can last: less where a dough works on in the warm than in a cellar or a fridge."""
    warm = limit("ripen-warm-from")
    proof = _longest_proof(work, step)
    if proof is not None:
        return proof
    if step.verb in RISES_WARM and step.heats and warm is not None and step.heats[0].celsius.likely >= warm:
        return limit(f"{step.verb}-warm-longest", work.kind)
    return limit(f"{step.verb}-longest", work.kind)


def _longest_proof(work: Work, step: Step) -> Fraction | None:
    """Seconds a loaf's proof can last where it is so warm: pieces have less to give than a whole dough."""
    most = limit("prove-hours-most", work.kind) if step.verb in RISES_WARM & PROVES else None
    if most is None or not step.heats or step.ramp is not None or not holds(BAKERS, step.heats[0].celsius.likely):
        return None
    return round_to(most * pace(BAKERS, WARM) / pace(BAKERS, step.heats[0].celsius.likely) / 1800, 0) * 1800


def too_long(work: Work, step: Step) -> bool:
    """Whether the step lasts longer than any such step is known to."""
    if step.time is None or step.time.low is None:
        return False
    most = longest(work, step)
    return most is not None and step.time.low > most


def check(work: Work) -> Iterator[Diagnostic]:
    for step in work.formula.steps:
        if step.time is None or step.per == "each" or not too_long(work, step):
            continue
        most = longest(work, step)
        known = "" if most is None else f": no more than {duration(most)} is known"
        yield report(NAME, step.place, f"`{step.verb}` for {span(step.time)}{known}", "check the unit: h, or min?")
