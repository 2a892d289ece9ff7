"""More of a culture is taken than is kept for next time, so that it runs out."""

from collections.abc import Iterator

from manchet.batch.cultures import cultures_used
from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold

NAME = "culture-does-not-carry-on"
ABOUT = ("keep",)


def check(work: Work) -> Iterator[Diagnostic]:
    used = cultures_used(work)
    for keep in (keep for stage in work.formula.stages for keep in stage.keeps):
        culture = used.get(fold(keep.name))
        if keep.how != "amount" or culture is None or not culture.short:
            continue
        message = (
            f"this takes {grams(culture.taken)} {keep.name} and keeps {grams(culture.back)}: "
            f"{grams(culture.short)} short for next time"
        )
        help = f"write `keep enough as {keep.name}`, or keep {grams(culture.taken)}"
        yield report(NAME, keep.place, message, help)
