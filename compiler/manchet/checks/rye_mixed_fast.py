"""A dough that is mostly rye, mixed long on fast: it has little gluten to develop and turns sticky."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.looking import dough_of, of_verbs
from manchet.checks.saying import duration, percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note

NAME = "rye-mixed-fast"


def check(subject: Subject) -> Iterator[Diagnostic]:
    much, most, dough = limit("rye-much"), limit("rye-fast-most"), dough_of(subject.formula)
    if much is None or most is None or dough is None or subject.totals.rye < much:
        return
    fast = [s for s in of_verbs(dough.steps, "mix") if "fast" in s.manner and s.time is not None]
    total = sum((s.time.likely for s in fast if s.time is not None), Fraction(0))
    if total > most:
        yield note(
            NAME,
            fast[-1].place,
            f"{duration(total)} of fast mixing for a dough of {percent(subject.totals.rye)} rye",
            f"mix it slow; {duration(most)} on fast is plenty",
        )
