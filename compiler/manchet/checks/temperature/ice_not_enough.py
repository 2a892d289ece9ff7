"""A dough so warm from all that goes in that its water could be all ice and it would still come out too warm."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.mix_temperature import dough_balance

NAME = "ice-not-enough"
ABOUT = ("kitchen air",)


def check(work: Work) -> Iterator[Diagnostic]:
    balance, dough = dough_balance(work), work.dough.stage
    wanted = wanted_of(dough.steps)
    if balance is None or wanted is None or not balance.free or balance.water().high >= balance.coldest:
        return
    reached = balance.dough(balance.coldest).likely
    how = (
        "all of its water ice" if balance.of_water else f"{balance.liquid} at {degrees(work.kitchen, balance.coldest)}"
    )
    message = f"{degrees(work.kitchen, balance.wanted)} is wanted; with {how} the dough comes out at about {degrees(work.kitchen, reached)}"
    help = "chill the flour or what ferments before it, mix less on fast, or write a warmer dough"
    yield report(NAME, dough.steps[wanted[0]].place, message, help)
