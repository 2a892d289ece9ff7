"""So much fast mixing that a wheat dough is beaten past its best."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import duration
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.mixing.turns import by_machine, is_fast

NAME = "mixed-too-long"
ABOUT = ("verb mix",)


def check(work: Work) -> Iterator[Diagnostic]:
    most, dough = limit("fast-mix-most", work.kind), work.formula.dough
    longest = limit("mix-longest", work.kind)
    if most is None or longest is None:
        return
    fast = [s for s in by_machine(dough.steps) if is_fast(s) and s.time is not None]
    total = sum((s.time.likely for s in fast if s.time is not None), Fraction(0))
    if total > most and all(s.time is None or s.time.likely <= longest for s in fast):
        message = f"{duration(total)} of fast mixing; past {duration(most)} the dough goes slack and white"
        yield report(NAME, fast[-1].place, message, "check the minutes, or put part of them on slow")
