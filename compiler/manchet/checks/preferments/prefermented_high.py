"""Nearly all the flour ripens before the dough is mixed: too little fresh flour is left to hold it up."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "prefermented-high"
ABOUT = ("verb ripen",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("prefermented-most", work.kind)
    share = work.totals.prefermented
    if most is None or share <= most:
        return
    stages = [s for s in work.formula.stages if s.flour_share is not None]
    biggest = max(stages, key=lambda s: s.flour_share or 0, default=None)
    message = f"{percent(share)} of all flour is in preferments; over {percent(most)} the dough has lost its strength"
    help = "the figure after `with` is a share of all flour; check it"
    yield report(NAME, biggest.place if biggest else work.formula.place, message, help)
