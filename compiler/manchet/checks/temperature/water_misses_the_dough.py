"""Water whose temperature is given, and with it the dough does not come out as warm as the mix says."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.mix_temperature import dough_balance

NAME = "water-misses-the-dough"
ABOUT = ("kitchen air",)


def check(work: Work) -> Iterator[Diagnostic]:
    within, balance = limit("dough-temperature-within"), dough_balance(work)
    if within is None or balance is None or balance.free:
        return
    given = [t for t in balance.rest if t.portion.ingredient is not None and t.portion.ingredient.class_ == "water"]
    given = [t for t in given if t.portion.celsius is not None]
    out = balance.dough()
    if not given or out.low - within <= balance.wanted <= out.high + within:
        return
    most = max(given, key=lambda t: t.portion.share)
    message = (
        f"with {most.portion.name} at {degrees(work.kitchen, most.celsius)} the dough comes out at about "
        f"{degrees(work.kitchen, Fraction(round(out.likely)))}, and {degrees(work.kitchen, balance.wanted)} is wanted"
    )
    help = "leave out the temperature, and the sheet works out the one that fits; or look at the kitchen's figures"
    yield report(NAME, most.portion.place, message, help)
