"""More dough lost on hands, bowl and scale than a bakery loses."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "dough-loss-implausible"
ABOUT = ("dough loss",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("dough-loss-most", work.kind)
    loss = work.formula.dough_loss
    if most is not None and loss > most:
        message = (
            f"a dough loss of {percent(loss)} is left in the bowl and on the scale; {percent(most)} is already a lot"
        )
        help = "check the decimal point; what evaporates in the oven is `bake loss`"
        yield report(NAME, work.formula.place, message, help)
