"""A dough with no water to warm or cool, that does not come out as warm as its mix says."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import degrees, other_warmth
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.mix_temperature import dough_balance
from manchet.figures.water.way_out import misses, way_out

NAME = "nothing-sets-the-dough"
ABOUT = ("kitchen air",)


def check(work: Work) -> Iterator[Diagnostic]:
    within, balance, kitchen = limit("dough-temperature-within"), dough_balance(work), work.kitchen
    wanted = wanted_of(work.dough.stage.steps)
    if within is None or balance is None or wanted is None or not misses(balance, within):
        return
    if any(t.portion.ingredient is not None and t.portion.celsius is not None for t in balance.rest):
        return
    reached = balance.dough().likely
    message = (
        f"no water can bring this dough to temperature: it comes out at about {degrees(kitchen, Fraction(round(reached)))}, "
        f"and {degrees(kitchen, balance.wanted)} is wanted"
    )
    warmer = reached < balance.wanted
    out = way_out(balance)
    generic = "warm what goes in" if warmer else "chill what goes in"
    help = other_warmth(kitchen, out.name, out.celsius, out.cooler) if out else generic
    yield report(
        NAME,
        work.dough.stage.steps[wanted[0]].place,
        message,
        f"{help}, or write a {'cooler' if warmer else 'warmer'} dough",
    )
