"""More dough lost on hands, bowl and scale than a bakery loses."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "dough-loss-implausible"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most = limit("dough-loss-most", subject.kind)
    loss = subject.formula.dough_loss
    if most is not None and loss > most:
        yield warning(
            NAME,
            subject.formula.place,
            f"a dough loss of {percent(loss)} is left in the bowl and on the scale; {percent(most)} is already much",
            "look at the decimal point; what evaporates in the oven is `bake loss`",
        )
