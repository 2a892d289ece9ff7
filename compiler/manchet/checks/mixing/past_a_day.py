"""More mixes or loads, one after another, than a day holds: no timing card is made."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.past_a_day import past_a_day, past_a_day_at_home

NAME = "past-a-day"
ABOUT = ()
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    for past in past_a_day(work):
        help = "make fewer, or correct what the kitchen says it holds at once; until then no timing card is made"
        if past.what == "mixes":
            help = "make less, or correct what the kitchen says the mixer takes; until then no timing card is made"
        yield report(NAME, past.step.place, past.said, help)


def check_at_home(work: Work) -> Iterator[Diagnostic]:
    """The same of what is to be made at home."""
    for past in past_a_day_at_home(work):
        help = "ask for as many as one oven bakes in a day; until then neither handout nor class set is made"
        yield report(NAME, past.step.place, past.said, help)
