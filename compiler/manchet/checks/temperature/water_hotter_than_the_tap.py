"""A dough so cold from what goes in that it takes hotter water than comes out of a tap."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.mix_temperature import dough_water

NAME = "water-hotter-than-the-tap"
ABOUT = ("kitchen air",)


def check(work: Work) -> Iterator[Diagnostic]:
    most, water, dough = limit("hot-tap"), dough_water(work), work.dough.stage
    wanted = wanted_of(dough.steps)
    if most is None or water is None or wanted is None or water.celsius.low <= most:
        return
    balance = water.balance
    message = (
        f"{degrees(work.kitchen, balance.wanted)} takes {balance.liquid} at about {degrees(work.kitchen, Fraction(round(water.celsius.likely)))}, and a hot tap "
        f"gives {degrees(work.kitchen, most)}"
    )
    help = "bring the flour or the preferment into the warm the day before, or write a cooler dough"
    yield report(NAME, dough.steps[wanted[0]].place, message, help)
