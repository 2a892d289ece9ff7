"""A dough that takes so much of its water as ice that the ice may not melt while it is mixed."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import degrees, other_warmth, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.mix_temperature import dough_water
from manchet.figures.water.way_out import way_out_with_water

NAME = "ice-past-a-third"
ABOUT = ("kitchen air",)


def check(work: Work) -> Iterator[Diagnostic]:
    most, water, dough = limit("ice-of-the-water"), dough_water(work), work.dough.stage
    wanted = wanted_of(dough.steps)
    if most is None or water is None or wanted is None or not water.can_be or not water.ice:
        return
    share = water.ice / water.grams
    if share <= most:
        return
    kitchen = work.kitchen
    message = f"{degrees(kitchen, water.balance.wanted)} takes {percent(Fraction(round(share * 100), 100))} of the water as ice"
    out = way_out_with_water(water.balance, water.tap)
    help = other_warmth(kitchen, out.name, out.celsius, out.cooler) if out else "chill the flour or the preferment"
    help = (
        f"{help}, mix less on fast, or write a warmer dough; else crush the ice, or it does not melt while it is mixed"
    )
    yield report(NAME, dough.steps[wanted[0]].place, message, help)
