"""A piece too heavy or too light for its kind: often kilograms for grams."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "piece-weight-implausible"
ABOUT = ()
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    several = len(work.formula.makes) > 1
    kind = "" if several else work.kind  # rolls from a loaf's dough are rolls
    least, most = limit("piece-least", kind), limit("piece-most", kind)
    if least is None or most is None or work.formula.preparation:
        return
    for makes in work.formula.makes:
        if makes.number is None or makes.grams is None or least <= makes.grams <= most:
            continue
        message = (
            f"one of the {makes.noun} weighs {grams(makes.grams)} of dough; "
            f"a {kind or 'bread'} weighs {grams(least)} to {grams(most)}"
        )
        yield report(NAME, makes.place, message, "look at the unit and the decimal point")
