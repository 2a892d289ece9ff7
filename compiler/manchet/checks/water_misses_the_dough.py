"""Water whose temperature is given, and with it the dough does not come out as warm as the mix says."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.subject import Subject
from manchet.checks.warmth import dough_balance
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note

NAME = "water-misses-the-dough"


def check(subject: Subject) -> Iterator[Diagnostic]:
    within, balance = limit("dough-temperature-within"), dough_balance(subject)
    if within is None or balance is None or balance.free:
        return
    given = [t for t in balance.rest if t.portion.ingredient is not None and t.portion.ingredient.class_ == "water"]
    given = [t for t in given if t.portion.celsius is not None]
    out = balance.dough()
    if not given or out.low - within <= balance.wanted <= out.high + within:
        return
    most = max(given, key=lambda t: t.portion.share)
    yield note(
        NAME,
        most.portion.place,
        f"with {most.portion.name} at {subject.degrees(most.celsius)} the dough comes out at about "
        f"{subject.degrees(Fraction(round(out.likely)))}, and {subject.degrees(balance.wanted)} is wanted",
        "leave the temperature out, and the sheet works out the one that fits; or look at the kitchen's figures",
    )
