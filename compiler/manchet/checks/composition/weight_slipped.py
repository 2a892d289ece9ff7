"""One weight a thousand or ten times too much or too little, in a formula that fits but for it: kg for g, a slipped point."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of
from manchet.checks.plausible import FAR, NEAR, can_be_weighed_up, faults, weights_in_all, weights_of
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "weight-slipped"
ABOUT = ("by weight",)
EXPLAINS = ("line-missing",)

SLIPS = (Fraction(1, 1000), Fraction(1000), Fraction(1, 10), Fraction(10))


def check(work: Work) -> Iterator[Diagnostic]:
    if not (work.formula.overall and can_be_weighed_up(work)):
        return
    lines = [(line, weights_of(work, line)) for line in work.formula.overall if line.ingredient is not None]
    now = weights_in_all(work)
    if len(set(faults(work, now, FAR))) < 2:
        return
    fits = [
        (line, one, times)
        for line, one in lines
        for times in SLIPS
        if not any(faults(work, now.with_more(one, times - 1), NEAR))
    ]
    if len(fits) != 1:
        return
    line, one, times = fits[0]
    meant = grams(one.whole * times)
    message = f"{grams(one.whole)} of {line.name}: with {meant} all the rest would fit, dough and pieces too"
    place = place_of(work.formula, lambda ingredient: ingredient is line.ingredient)
    yield report(NAME, place, message, f"did you mean {meant}? check the unit and the decimal point")
