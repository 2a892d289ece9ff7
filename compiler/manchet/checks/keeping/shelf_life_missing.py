"""A preparation of egg, milk or vegetables that nobody knows how long to keep."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.keeping.kept_too_warm import PERISHABLE
from manchet.checks.looking import ingredients
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "shelf-life-missing"
ABOUT = ("preparation",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if not formula.preparation or formula.dish or formula.good_for is not None:
        return
    perishable = next((i for i in ingredients(formula) if i.class_ in PERISHABLE), None)
    if perishable is not None:
        message = f"nothing says how long {formula.name} may be kept, and it holds {perishable.name}"
        yield report(NAME, formula.place, message, "add a line such as `good for 1 d at 4 C`")
