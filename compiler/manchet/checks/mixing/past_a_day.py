"""More mixes or loads, one after another, than a day holds: no timing card is made, and of more than can be told one by one no handout."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.oven.bakes import DAY, MOST_LOADS
from manchet.figures.past_a_day import PastDay, past_a_day
from manchet.formula.durations import duration

NAME = "past-a-day"
ABOUT = ()
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    for past in past_a_day(work):
        help = "make fewer, or correct what the kitchen says it holds at once; until then no timing card and no handout is made"
        if past.what == "mixes":
            help = "make less, or correct what the kitchen says the mixer takes; until then no timing card and no handout is made"
        yield report(NAME, past.step.place, _message(past), help)


def _message(past: PastDay) -> str:
    what = f"{past.number:,} {past.what}{past.of and f' of {past.of}'} in {past.where}"
    if past.seconds > DAY:
        return f"{what} take {duration(past.seconds)} one after another; a day has 24 h"
    return f"{what} are more than the {MOST_LOADS} that a card can tell one by one"
