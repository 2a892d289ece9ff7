"""More plates come out of one heat than can be dressed before the first of them is to be served."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.parts_needed import plates_at_once
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.durations import duration
from manchet.formula.model import Step, Who
from manchet.syntax.vocabulary import COOKS

NAME = "too-many-to-serve"
ABOUT = ("preparation",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    limit = work.formula.serve_within
    if limit is None or not work.batch.pieces:
        return
    steps = work.formula.dough.steps
    heat = max((at for at, step in enumerate(steps) if step.verb in COOKS), default=-1)
    seconds = sum((_seconds(step, work) for step in steps[heat + 1 :]), Fraction(0))
    plates = min(plates_at_once(work.batch) or int(work.batch.pieces[0].number), int(work.batch.pieces[0].number))
    hands = max(work.kitchen.hands or 1, 1)
    if seconds * plates / hands > limit:
        noun = work.batch.pieces[0].noun
        message = (
            f"{plates} {noun} come out of one heat and take {duration(seconds * plates / hands)} to dress with {hands} "
            f"{'pair' if hands == 1 else 'pairs'} of hands; they are to be served within {duration(limit)}"
        )
        help = "heat fewer of them at a time (`6 at a time`), or put more hands to it"
        at = next(step.place for step in steps if step.serve_within is not None)
        yield report(NAME, at, message, help)


def _seconds(step: Step, work: Work) -> Fraction:
    """Seconds of work on one plate, as the step says, else as the kitchen does; 0 where neither says any."""
    if step.who is not Who.HANDS:
        return Fraction(0)
    if step.time is not None:
        return step.time.likely if step.per == "each" else Fraction(0)
    return dict(work.kitchen.minutes).get(step.verb, Fraction(0))
