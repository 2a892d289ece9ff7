"""A dough so cold from what goes in that it takes hotter water than comes out of a tap."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.subject import Subject
from manchet.checks.warmth import dough_balance
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note
from manchet.figures.dough_temperature import wanted_of

NAME = "water-hotter-than-the-tap"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most, balance, dough = limit("hot-tap"), dough_balance(subject), subject.batch.stages[-1].stage
    wanted = wanted_of(dough.steps)
    if most is None or balance is None or wanted is None or not balance.free or balance.water().low <= most:
        return
    yield note(
        NAME,
        dough.steps[wanted[0]].place,
        f"{subject.degrees(balance.wanted)} takes {balance.liquid} at about {subject.degrees(Fraction(round(balance.water().likely)))}, and a hot tap "
        f"gives {subject.degrees(most)}",
        "bring the flour or what ferments before it into the warm the day before, or write a cooler dough",
    )
