"""A dough so stiff that the second speed strains the mixer and tears it."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.mixing.turns import by_machine, is_fast

NAME = "stiff-dough-on-fast"
ABOUT = ("kitchen mixer",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("fast-water-least")
    wet = work.totals.wet
    fast = [step for step in by_machine(work.dough.stage.steps) if is_fast(step)]
    if most is None or not fast or wet > most:
        return
    message = (
        f"fast mixing of a dough with {percent(wet)} water and fat; at {percent(most)} and less a mixer is run slow"
    )
    yield report(NAME, fast[0].place, message, "mix it slow, about twice as long")
