"""A share of some ingredient that no bread has: nearly always a slipped decimal point or unit."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import boiled_paste, place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "share-implausible"
ABOUT = ()
EXPLAINS = ("hydration-high", "hydration-low", "sugar-against-ordinary-yeast")
CLASSES = ("fat", "egg", "sweetener", "spice", "malt", "fruit", "nut", "seed", "dairy")
"""Salt, water, yeast and raising agents have checks of their own."""


def check(work: Work) -> Iterator[Diagnostic]:
    if (
        work.formula.preparation
        or not work.formula.has_flour
        or work.bread.as_rich_as_you_like
        or boiled_paste(work.formula)
    ):
        return
    for class_ in CLASSES:
        most = limit(f"{class_}-most")
        share = work.totals.by_class.get(class_, Fraction(0))
        if most is None or share <= most:
            continue
        message = f"{percent(share)} of the flour is {class_}; no bread we know of has over {percent(most)}"
        help = f"did you mean {percent(share / 10)}? check the decimal point and the unit"
        yield report(NAME, place_of_class(work.formula, class_), message, help)
