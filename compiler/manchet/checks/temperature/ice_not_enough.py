"""A dough so warm from all that goes in that its water could be all ice and it would still come out too warm."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees, other_warmth
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.mix_temperature import dough_water
from manchet.figures.water.way_out import way_out_with_water

NAME = "ice-not-enough"
ABOUT = ("kitchen air",)


def check(work: Work) -> Iterator[Diagnostic]:
    water, dough = dough_water(work), work.dough.stage
    wanted = wanted_of(dough.steps)
    if water is None or wanted is None or water.celsius.likely >= water.balance.coldest:
        return
    balance, kitchen = water.balance, work.kitchen
    reached = balance.dough(balance.coldest).likely
    how = "all of its water ice" if balance.of_water else f"{balance.liquid} at {degrees(kitchen, balance.coldest)}"
    message = f"{degrees(kitchen, balance.wanted)} is wanted; with {how} the dough comes out at about {degrees(kitchen, reached)}"
    out = way_out_with_water(balance, water.tap)
    help = other_warmth(kitchen, out.name, out.celsius, out.cooler) if out else "chill the flour or the preferment"
    yield report(NAME, dough.steps[wanted[0]].place, message, f"{help}, mix less on fast, or write a warmer dough")
