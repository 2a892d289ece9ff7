"""Less dough than the smallest mixer can take hold of."""

from collections.abc import Iterator

from manchet.checks.looking import dough_of, of_verbs
from manchet.checks.saying import grams
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note

NAME = "dough-under-mixer"


def check(subject: Subject) -> Iterator[Diagnostic]:
    mixers = [m for m in subject.kitchen.mixers if m.least_grams is not None]
    dough = dough_of(subject.formula)
    if dough is None or not mixers or len(mixers) < len(subject.kitchen.mixers):
        return
    first = next((s for s in of_verbs(dough.steps, "mix") if "by hand" not in s.manner), None)
    smallest = min(mixers, key=lambda m: m.least_grams or 0)
    if first is None or smallest.least_grams is None or subject.batch.dough >= smallest.least_grams:
        return
    yield note(
        NAME,
        first.place,
        f"{grams(subject.batch.dough)} of dough; {smallest.name} needs {grams(smallest.least_grams)} to take hold",
        "make more, or mix by hand",
    )
