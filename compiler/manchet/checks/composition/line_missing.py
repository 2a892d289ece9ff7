"""Dough short of its pieces by a weight that only flour, or only water, can make up: a line was left out."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.plausible import FAR, NEAR, NO_WEIGHTS, can_be_weighed_up, faults, weight_for_pieces, weights_in_all
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "line-missing"
ABOUT = ("by weight",)
EXPLAINS = (
    "bake-too-short", "dough-left-over", "dough-short-of-pieces", "dough-over-mixer", "dough-under-mixer", "hydration-high",
    "hydration-low", "malt-active-high", "prefermented-high", "raising-agent-high", "salt-high", "salt-low",
    "scald-too-small", "seed-implausible", "share-implausible", "stiff-dough-on-fast", "sugar-against-ordinary-yeast",
    "vessels-too-few", "yeast-against-time", "yeast-high", "preferment-yeast-against-time", "preferment-wetness-odd",
    "kind-against-flour", "inclusions-in-first-mix", "water-misses-the-dough", "ice-not-enough", "ice-past-a-third", "nothing-sets-the-dough", "water-hotter-than-the-tap",
    "culture-does-not-carry-on",
)  # fmt: skip

FLOUR = NO_WEIGHTS._replace(flour=Fraction(1), whole=Fraction(1))
WATER = NO_WEIGHTS._replace(water=Fraction(1), whole=Fraction(1))


def check(work: Work) -> Iterator[Diagnostic]:
    if not can_be_weighed_up(work) or not work.formula.overall:
        return
    now = weights_in_all(work)
    short = weight_for_pieces(work) - now.whole
    if short <= 0 or len(set(faults(work, now, FAR / 5))) < 2:
        return
    fits = [
        name
        for name, one in (("flour", FLOUR), ("water", WATER))
        if not any(faults(work, now.with_more(one, short), NEAR))
    ]
    if len(fits) != 1:
        return
    message = f"about {grams(short)} of {fits[0]} is missing: with that much the dough is right and fills its pieces"
    yield report(NAME, work.formula.dough.place, message, f"add the line of {fits[0]} that was left out")
