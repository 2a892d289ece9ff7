"""A dough that is mostly rye, mixed long on fast: it has little gluten to develop and turns sticky."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import duration, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "rye-mixed-fast"
ABOUT = ("class rye flour",)


def check(work: Work) -> Iterator[Diagnostic]:
    much, most, dough = limit("rye-much"), limit("rye-fast-most"), work.formula.dough
    if much is None or most is None or work.formula.preparation or work.totals.rye < much:
        return
    fast = [s for s in of_verbs(dough.steps, "mix") if "fast" in s.manner and s.time is not None]
    total = sum((s.time.likely for s in fast if s.time is not None), Fraction(0))
    if total > most:
        message = f"{duration(total)} of fast mixing for a dough of {percent(work.totals.rye)} rye"
        yield report(NAME, fast[-1].place, message, f"mix it slow; {duration(most)} on fast is plenty")
