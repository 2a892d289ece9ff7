"""Vegetables, garlic or herbs kept under fat longer than public advice allows (botulism)."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import WETS, fat_share, portions
from manchet.checks.saying import duration, limit_degrees, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.foods import grows_wet

NAME = "under-oil-too-long"
ABOUT = ("good for",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula, most, much = work.formula, limit("under-oil-longest"), limit("under-oil-fat-least")
    cold = limit("under-oil-cold")
    if most is None or much is None or cold is None or formula.good_for is None or formula.good_for.seconds <= most:
        return
    there = tuple(portions(formula))
    soaked = any(p.ingredient and p.ingredient.class_ in WETS for p in there)
    plant = next((p for p in there if p.ingredient and grows_wet(p.ingredient, p.name, soaked)), None)
    fat = fat_share(formula)
    if plant is None or fat < much:
        return
    message = (
        f"{plant.name} under fat ({percent(fat)} of it) kept {duration(formula.good_for.seconds)}; "
        f"public advice is {duration(most)} at {limit_degrees(work.kitchen, cold)}"
    )
    yield report(NAME, formula.place, message, "make less at a time, or freeze it; your own food law may ask for less")
