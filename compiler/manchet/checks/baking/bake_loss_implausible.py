"""A bake loss outside what loaves of this kind lose."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import boiled_paste
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "bake-loss-implausible"
ABOUT = ("bake loss",)


def check(work: Work) -> Iterator[Diagnostic]:
    loss = work.formula.bake_loss
    least, most = limit("bake-loss-least", work.kind), limit("bake-loss-most", work.kind)
    if boiled_paste(work.formula):
        most = limit("bake-loss-most")  # hollow, and mostly dried
    if loss is None or most is None or work.formula.preparation:
        return
    if (least is None or loss >= least) and loss <= most:
        return
    bounds = f"up to {percent(most)}" if least is None else f"{percent(least)} to {percent(most)}"
    message = f"a bake loss of {percent(loss)}; a {work.kind or 'bread'} loses {bounds} of its dough"
    help = "weigh ten pieces before and after baking; look at the decimal point"
    yield report(NAME, work.formula.place, message, help)
