"""A step that takes far longer than such a step can: often hours where minutes were meant."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import duration, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step
from manchet.syntax.vocabulary import RISES_WARM

NAME = "hours-for-minutes"
ABOUT = ()


def longest(work: Work, step: Step) -> Fraction | None:
    """Seconds such a step can last: less where a dough works on in the warm than in a cellar or a fridge."""
    warm = limit("ripen-warm-from")
    if step.verb in RISES_WARM and step.heats and warm is not None and step.heats[0].celsius.likely >= warm:
        return limit(f"{step.verb}-warm-longest", work.kind)
    return limit(f"{step.verb}-longest", work.kind)


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
        yield report(NAME, step.place, f"`{step.verb}` for {span(step.time)}{known}", "look at the unit: h, or min?")
