"""Works for tests: from the text of a bakery the way a build goes, or from a batch made by hand."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.formula.model import Formula
from manchet.kitchen.model import PLAIN, Kitchen
from manchet.larder.book import Larder, builtin
from manchet.source.text import SourceText
from manchet.workspace.bakery import Bakery, read
from manchet.workspace.changes import Changes

STEPS_ALONE = PLAIN._replace(minutes=tuple((what, Fraction(0)) for what in ("weigh", "load", "take out")))
"""A kitchen in which only steps take time: a schedule worked out by hand has weighing, loading and taking out in them."""


def bakery_of(text: str, changes: Changes | None = None) -> Bakery:
    return read([SourceText("test.bake", text)], changes=changes)


def reports_of(text: str) -> tuple[Diagnostic, ...]:
    return bakery_of(text).diagnostics


def formula_of(text: str) -> Formula:
    """The one formula of a text."""
    bakery = bakery_of(text)
    assert len(bakery.formulas) == 1, bakery.diagnostics
    return bakery.formulas[0]


def first_work(text: str, order: Order = AS_WRITTEN) -> Work:
    """The first formula of a text, in its kitchen."""
    bakery = bakery_of(text)
    assert bakery.formulas, bakery.diagnostics
    return work_in(bakery, bakery.formulas[0], order)


def work_in(bakery: Bakery, formula: Formula, order: Order = AS_WRITTEN) -> Work:
    """A formula of a bakery in its kitchen; it has to be possible."""
    work = bakery.work(formula, order)
    assert work.value is not None, [report.message for report in work.diagnostics]
    return work.value


def works(bakery: Bakery) -> tuple[Work, ...]:
    return tuple(work_in(bakery, formula) for formula in bakery.formulas)


def by_hand(batch: Batch, kitchen: Kitchen = PLAIN, larder: Larder | None = None) -> Work:
    """A batch that no file describes."""
    return Work(AS_WRITTEN, batch, kitchen, larder or builtin())
