"""A bake loss outside what loaves of this kind lose."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import boiled_paste, breads
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "bake-loss-implausible"
ABOUT = ("bake loss",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    least, most = limit("bake-loss-least", work.kind), limit("bake-loss-most", work.kind)
    if boiled_paste(formula):
        most = limit("bake-loss-most")  # hollow, and mostly dried
    for noun, _ in breads(formula):
        loss, losing = formula.piece_loss(noun), formula.losing_steps(noun)
        if loss is None or most is None or ((least is None or loss >= least) and loss <= most):
            continue
        bounds = f"up to {percent(most)}" if least is None else f"{percent(least)} to {percent(most)}"
        message = f"a bake loss of {percent(loss)}; a {work.kind or 'bread'} loses {bounds} of its dough"
        help = "weigh ten pieces before and after baking; look at the decimal point"
        yield report(NAME, losing[0].place if losing else formula.place, message, help)
        return
