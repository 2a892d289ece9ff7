"""A piece too heavy or too light for its kind: often kilograms for grams."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.nouns import singular

NAME = "piece-weight-implausible"
ABOUT = ()
OF_SIZE = True
EXPLAINS = ("bake-too-short", "dough-left-over", "dough-short-of-pieces", "tin-fill-odd", "topping-implausible")


def check(work: Work) -> Iterator[Diagnostic]:
    several = len(work.formula.makes) > 1
    kind = "" if several else work.kind  # rolls from a loaf's dough are rolls
    least, most = limit("piece-least", kind), limit("piece-most", kind)
    if least is None or most is None or work.formula.preparation:
        return
    for makes in work.formula.makes:
        small = _small_most(makes.noun)
        heaviest = most if small is None else min(most, small)
        if makes.number is None or makes.grams is None or least <= makes.grams <= heaviest:
            continue
        what = f"a {kind or 'bread'} weighs" if heaviest == most else f"{makes.noun} weigh"
        message = (
            f"one of the {makes.noun} weighs {grams(makes.grams)} of dough; {what} {grams(least)} to {grams(heaviest)}"
        )
        yield report(NAME, makes.place, message, "check the unit and the decimal point")


SMALL = (
    "roll",
    "bun",
    "bap",
    "bagel",
    "knot",
    "scone",
    "doughnut",
    "donut",
    "croissant",
    "muffin",
    "pretzel",
    "bread stick",
)
"""Nouns of the trade for a piece that one person eats. Common practice."""


def _small_most(noun: str) -> Fraction | None:
    """Grams of dough that a piece so called has at the most; None for a noun that says no size."""
    name = singular(noun).casefold()
    called = any(name == small or name.endswith(f" {small}") for small in SMALL)
    return limit("small-piece-most") if called and "loaf" not in name else None
