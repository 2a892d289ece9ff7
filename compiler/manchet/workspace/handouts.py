"""From a sound formula to its handout: sized for one domestic oven, weighed on one scale, with the baker's pictures."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.mixes import mixes_of
from manchet.batch.model import Batch
from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.totals import totals_of
from manchet.batch.weighing import weigh
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.figures.water.home_water import home_waters
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.sheets.handout_values import Handout
from manchet.sheets.handout_view import handout
from manchet.sheets.home_made import needed
from manchet.sheets.home_size import kitchen_at_home, order_at_home, seed_at_home
from manchet.sheets.prep_view import Prepared
from manchet.sheets.views import House, Issue
from manchet.workspace.bakery import Bakery, batch_for
from manchet.workspace.pictures import Pictures
from manchet.workspace.print_options import Wish


def taken_home(
    bakery: Bakery, formula: Formula, kitchen: Kitchen, wish: Wish, issue: Issue, house: House, pictures: Pictures
) -> Outcome[Handout | None]:
    """The handout's view; None, with the reason, where the size asked for cannot be made.

    What is asked for with options is made; with none, what fits one oven at home.
    """
    order = wish.order
    written = batch_for(formula, AS_WRITTEN, kitchen)
    if written.value is not None:
        order = order_at_home(written.value) if order == AS_WRITTEN else order
        formula = _smaller(formula, written.value, order, kitchen)
    batch = batch_for(formula, order, kitchen)
    if batch.value is None:
        return Outcome(None, batch.diagnostics)
    at_home = kitchen_at_home(kitchen, house.words)
    totals = totals_of(formula, bakery.larder)
    mixes = mixes_of(batch.value, at_home, totals.wet)
    tables = [weigh(making, at_home) for making in mixes.makings]
    cautions = cautions_of(Work(order, batch.value, kitchen, bakery.larder))
    work = Prepared(batch.value, mixes, tuple(table.value for table in tables), totals, at_home, cautions)
    reports = [r for table in tables for r in table.diagnostics if r.severity is not Severity.NOTE]
    waters = home_waters(batch.value, at_home, mixes, bakery.larder)
    work = work._replace(pictures=pictures, at_home=waters)
    view = handout(work, issue, house, wish.benches, wish.blanks, _made_ahead(bakery, batch.value, at_home))
    return Outcome(view, (*batch.diagnostics, *reports))


def _made_ahead(bakery: Bakery, batch: Batch, kitchen: Kitchen) -> tuple[Prepared, ...]:
    """The preparations a batch needs, each as much as it needs: what goes into another stands before it."""
    known = {fold(f.name): f for f in bakery.formulas if f.preparation}
    wanted: dict[str, Fraction] = {}
    order: dict[str, None] = {}

    def gather(user: Batch) -> None:
        for key, grams in needed(user).items():
            made = _so_much(known[key], grams, kitchen) if key in known else None
            if made is not None:
                wanted[key] = wanted.get(key, Fraction(0)) + grams
                gather(made)
                order.setdefault(key)

    gather(batch)
    made = (_so_much(known[key], wanted[key], kitchen) for key in order)
    return tuple(_prepared(each, bakery, kitchen) for each in made if each is not None)


def _so_much(preparation: Formula, grams: Fraction, kitchen: Kitchen) -> Batch | None:
    return batch_for(preparation, Order(dough=grams), kitchen).value


def _prepared(batch: Batch, bakery: Bakery, kitchen: Kitchen) -> Prepared:
    totals = totals_of(batch.formula, bakery.larder)
    mixes = mixes_of(batch, kitchen, totals.wet)
    return Prepared(batch, mixes, tuple(weigh(making, kitchen).value for making in mixes.makings), totals, kitchen)


def _smaller(formula: Formula, written: Batch, order: Order, kitchen: Kitchen) -> Formula:
    """The formula as it is made at home, where that is less than the file makes."""
    batch = batch_for(formula, order, kitchen).value
    return formula if batch is None or batch.flour >= written.flour else seed_at_home(formula)
