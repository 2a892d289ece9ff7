"""Nearly all the flour ripens before the dough is mixed: too little fresh flour is left to hold it up."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "prefermented-high"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most = limit("prefermented-most", subject.kind)
    share = subject.totals.prefermented
    if most is None or subject.formula.preparation or share <= most:
        return
    stages = [s for s in subject.formula.stages if s.flour_share is not None]
    biggest = max(stages, key=lambda s: s.flour_share or 0, default=None)
    yield warning(
        NAME,
        biggest.place if biggest else subject.formula.place,
        f"{percent(share)} of all flour is in preferments; over {percent(most)} the dough has lost its strength",
        "the figure after `with` is a share of all flour; look at it",
    )
