"""A formula by weight that weighs more dough than its pieces take; our rule: 5 % more is left over."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.pieces import PieceWeights, dough_span
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.model import Way
from manchet.quantities.printing import mass_text

NAME = "dough-left-over"
ABOUT = ("by weight",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    span, needed = dough_span(formula), PieceWeights(formula).dough(formula.makes).value
    if formula.way is not Way.BY_WEIGHT or formula.own_flour is None or span is None:
        return
    _, most = span
    assert needed is not None
    there = formula.dough_share * formula.own_flour * (1 - formula.dough_loss)
    if needed and there * Fraction(95, 100) > most:
        message = f"the weights give {mass_text(there)} of dough, the pieces take {mass_text(needed)}: {mass_text(there - needed)} is left"
        yield report(NAME, formula.makes[0].place, message, "make more or heavier pieces, or weigh less")
