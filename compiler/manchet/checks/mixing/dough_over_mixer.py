"""More dough than the mixer takes of one so stiff: it has to be mixed in parts."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import grams, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.mixing.turns import by_machine

NAME = "dough-over-mixer"
ABOUT = ("kitchen mixer",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    wet, mixes = work.totals.wet, work.mixes
    if mixes.number == 1 or mixes.mixer is None or mixes.most is None:
        return
    dough, takes = f"{grams(mixes.grams * mixes.number)} of dough", f"takes {grams(mixes.most)}"
    if mixes.is_stiff:
        dough += f" with {percent(wet)} water and fat"
        takes = f"takes about {grams(mixes.most)} of one so stiff"
    message = f"{dough}; {mixes.mixer.name} {takes}: {mixes.number} mixes"
    help = "make less at a time, or let the sheet split it"
    yield report(NAME, by_machine(work.dough.stage.steps)[0].place, message, help)
