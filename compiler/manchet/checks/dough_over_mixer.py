"""More dough than the largest mixer takes: it has to be mixed in parts."""

from collections.abc import Iterator
from math import ceil

from manchet.checks.looking import dough_of, of_verbs
from manchet.checks.saying import grams
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note

NAME = "dough-over-mixer"


def check(subject: Subject) -> Iterator[Diagnostic]:
    mixers = [m for m in subject.kitchen.mixers if m.most_grams is not None]
    dough = dough_of(subject.formula)
    if dough is None or not mixers or len(mixers) < len(subject.kitchen.mixers):
        return
    first = next((s for s in of_verbs(dough.steps, "mix") if "by hand" not in s.manner), None)
    largest = max(mixers, key=lambda m: m.most_grams or 0)
    if first is None or largest.most_grams is None or subject.batch.dough <= largest.most_grams:
        return
    mixes = ceil(subject.batch.dough / largest.most_grams)
    yield note(
        NAME,
        first.place,
        f"{grams(subject.batch.dough)} of dough; {largest.name} takes {grams(largest.most_grams)}: {mixes} mixes",
        "make less at a time, or let the sheet split it",
    )
