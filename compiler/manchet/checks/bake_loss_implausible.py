"""A bake loss outside what loaves of this kind lose."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "bake-loss-implausible"


def check(subject: Subject) -> Iterator[Diagnostic]:
    loss = subject.formula.bake_loss
    least, most = limit("bake-loss-least", subject.kind), limit("bake-loss-most", subject.kind)
    if loss is None or most is None or subject.formula.preparation:
        return
    if (least is None or loss >= least) and loss <= most:
        return
    bounds = f"up to {percent(most)}" if least is None else f"{percent(least)} to {percent(most)}"
    yield warning(
        NAME,
        subject.formula.place,
        f"a bake loss of {percent(loss)}; a {subject.kind or 'bread'} loses {bounds} of its dough",
        "weigh ten pieces before and after baking; look at the decimal point",
    )
