"""A kind that says wheat of a dough that is mostly rye, or rye of one that has next to none."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "kind-against-flour"
ABOUT = ("class rye flour", "a rye loaf")


def check(work: Work) -> Iterator[Diagnostic]:
    formula, rye = work.formula, work.totals.rye
    most, least = limit("rye-in-wheat-most"), limit("rye-in-rye-least")
    if most is None or least is None:
        return
    if formula.bread.flour == "wheat" and rye > most:
        message = f"{formula.name} is of kind {formula.kind} with {percent(rye)} rye flour"
        help = f"`kind rye {formula.kind}` judges its water, its core and its cooling as a rye"
        yield report(NAME, formula.place, message, help)
    elif formula.bread.flour == "rye" and rye < least:
        message = f"{formula.name} is of kind {formula.kind} with only {percent(rye)} rye flour"
        help = f"`kind {formula.kind.removeprefix('rye ')}` judges it as a wheat bread"
        yield report(NAME, formula.place, message, help)
