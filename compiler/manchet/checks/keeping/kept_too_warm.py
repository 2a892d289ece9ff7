"""A preparation of egg, milk or vegetables whose keeping temperature lets germs grow."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import ingredients
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "kept-too-warm"
ABOUT = ("good for",)
PERISHABLE = frozenset({"egg", "dairy", "vegetable"})


def check(work: Work) -> Iterator[Diagnostic]:
    most, hot, kept = limit("kept-cold-most"), limit("kept-hot-least"), work.formula.good_for
    if most is None or hot is None or kept is None or kept.celsius is None or not most < kept.celsius.likely < hot:
        return
    perishable = next((i for i in ingredients(work.formula) if i.class_ in PERISHABLE), None)
    if perishable is not None:
        message = f"{work.formula.name} holds {perishable.name} and is to be kept at {degrees(work.kitchen, kept.celsius.likely)}"
        help = f"keep it at {degrees(work.kitchen, most)} or colder; your own food law may ask for less"
        yield report(NAME, work.formula.place, message, help)
