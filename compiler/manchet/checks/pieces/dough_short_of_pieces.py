"""A formula by weight that weighs less dough than its pieces take; our rule: 1 % less is too little."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.pieces import PieceWeights, dough_span
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.model import Way
from manchet.quantities.printing import mass_text

NAME = "dough-short-of-pieces"
ABOUT = ("by weight",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    span, needed = dough_span(formula), PieceWeights(formula).dough(formula.makes).value
    if formula.way is not Way.BY_WEIGHT or formula.own_flour is None or span is None:
        return
    least, _ = span
    assert needed is not None
    there = formula.dough_share * formula.own_flour * (1 - formula.dough_loss)
    if needed and least > there * Fraction(101, 100):
        message = f"the pieces need {mass_text(needed)} of dough, the weights give {mass_text(there)}"
        yield report(NAME, formula.makes[0].place, message, "make fewer or lighter pieces, or weigh more")
