"""A dough so warm from all that goes in that its water could be all ice and it would still come out too warm."""

from collections.abc import Iterator

from manchet.checks.subject import Subject
from manchet.checks.warmth import dough_balance
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note
from manchet.figures.dough_temperature import wanted_of

NAME = "ice-not-enough"


def check(subject: Subject) -> Iterator[Diagnostic]:
    balance, dough = dough_balance(subject), subject.batch.stages[-1].stage
    wanted = wanted_of(dough.steps)
    if balance is None or wanted is None or not balance.free or balance.water().high >= balance.coldest:
        return
    reached = balance.dough(balance.coldest).likely
    how = "all of its water ice" if balance.of_water else f"{balance.liquid} at {subject.degrees(balance.coldest)}"
    yield note(
        NAME,
        dough.steps[wanted[0]].place,
        f"{subject.degrees(balance.wanted)} is wanted; with {how} the dough comes out at about {subject.degrees(reached)}",
        "chill the flour or what ferments before it, mix less on fast, or write a warmer dough",
    )
