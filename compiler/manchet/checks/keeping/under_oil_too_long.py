"""Vegetables, garlic or herbs kept under fat longer than public advice allows (botulism)."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import portions
from manchet.checks.saying import duration, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "under-oil-too-long"
ABOUT = ("good for",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula, most, much = work.formula, limit("under-oil-longest"), limit("under-oil-fat-least")
    if most is None or much is None or formula.good_for is None or formula.good_for[0] <= most:
        return
    plant = next((p for p in portions(formula) if p.ingredient and p.ingredient.class_ == "vegetable"), None)
    everything = sum((p.share for p in portions(formula)), start=formula.dough_loss * 0)
    fat = sum((p.share for p in portions(formula) if p.ingredient and p.ingredient.class_ == "fat"), start=most * 0)
    if plant is None or not everything or fat / everything < much:
        return
    message = (
        f"{plant.name} under fat ({percent(fat / everything)} of it) kept {duration(formula.good_for[0])}; "
        f"public advice is {duration(most)} at 4 C"
    )
    yield report(NAME, formula.place, message, "make less at a time, or freeze it; your own food law may ask for less")
