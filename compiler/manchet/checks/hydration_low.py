"""Less water in all than this kind of dough can be made with."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "hydration-low"


def check(subject: Subject) -> Iterator[Diagnostic]:
    least = limit("water-least", subject.kind)
    water = subject.totals.water_in_all
    if least is None or subject.formula.preparation or water >= least:
        return
    yield warning(
        NAME,
        place_of_class(subject.formula, "water", "dairy", "liquid"),
        f"water in all is {percent(water)} of the flour; a {subject.kind} dough seldom has under {percent(least)}",
        "look for a missing liquid, a wrong unit or a slipped decimal point",
    )
