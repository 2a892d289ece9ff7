"""Lye weighed into a dough: it belongs in a bath, on the skin."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "lye-in-dough"
ABOUT = ("class lye",)


def check(work: Work) -> Iterator[Diagnostic]:
    if work.formula.preparation:
        return
    for portion in work.formula.dough.portions:
        if portion.ingredient is not None and portion.ingredient.class_ == "lye":
            help = "make a `preparation` of lye and water and write `dip in lye bath 4 g each`"
            yield report(NAME, portion.place, f"{portion.name} is weighed into the dough", help)
