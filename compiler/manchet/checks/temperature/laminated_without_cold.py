"""Butter locked in and folded with nothing cold before it or between the folds: it is worked into the dough."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import breads, locks_in_butter
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step
from manchet.syntax.vocabulary import COLD

NAME = "laminated-without-cold"
ABOUT = ("verb lock in",)


def check(work: Work) -> Iterator[Diagnostic]:
    cold = limit("chill-warmest")
    if cold is None:
        return
    for _, steps in breads(work.formula):
        locked = next((n for n, step in enumerate(steps) if locks_in_butter(work.formula, step)), None)
        if locked is None:
            continue
        folds = [n for n, step in enumerate(steps) if n > locked and step.verb == "fold"]
        before = any(_is_cold(step, cold) for step in steps[:locked])
        last = folds[-1] if folds else locked
        between = any(_is_cold(step, cold) for step in steps[locked:last])
        if not before and not between:
            message = "butter is locked in, and the dough is never chilled, neither before the folds nor between them"
            help = "chill the dough before this step, and between the folds: `chill covered 40 min at 4 C`"
            yield report(NAME, steps[locked].place, message, help)
            return
        late = _one_too_many(steps, folds, cold)
        if late is not None:
            message = "a third fold in a row, with no chilling between them"
            help = (
                "put a line such as `chill covered 30-40 min at 4 C` before it, or the butter is worked into the dough"
            )
            yield report(NAME, late.place, message, help)
            return


def _is_cold(step: Step, most: Fraction) -> bool:
    return step.verb in COLD or bool(step.heats and step.time is not None and step.heats[0].celsius.likely <= most)


def _one_too_many(steps: Sequence[Step], folds: Sequence[int], cold: Fraction) -> Step | None:
    """The first fold that stands on end after two others."""
    for first, third in zip(folds, folds[2:], strict=False):
        if not any(_is_cold(step, cold) for step in steps[first:third]):
            return steps[third]
    return None
