"""A kind that says wheat of a dough that is mostly rye, or rye of one that has next to none."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note
from manchet.figures.limits.lookup import limit

NAME = "kind-against-flour"


def check(work: Work) -> Iterator[Diagnostic]:
    formula, rye = work.formula, work.totals.rye
    most, least = limit("rye-in-wheat-most"), limit("rye-in-rye-least")
    if most is None or least is None or formula.preparation:
        return
    if formula.kind in ("hearth loaf", "tin loaf") and rye > most:
        yield note(
            NAME,
            formula.place,
            f"{formula.name} is of kind {formula.kind} with {percent(rye)} rye flour",
            f"`kind rye {formula.kind}` judges its water, its core and its cooling as a rye",
        )
    elif formula.kind in ("rye hearth loaf", "rye tin loaf") and rye < least:
        yield note(
            NAME,
            formula.place,
            f"{formula.name} is of kind {formula.kind} with only {percent(rye)} rye flour",
            f"`kind {formula.kind.removeprefix('rye ')}` judges it as a wheat bread",
        )
