"""A sound formula as it is made at home: sized for one domestic oven, with the preparations it needs."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.preparations_needed import preparations_needed
from manchet.batch.work import Work, work_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.figures.oven.at_home import kitchen_at_home, order_at_home, seed_at_home
from manchet.formula.model import Formula
from manchet.sheets.form import HomeWork
from manchet.sheets.page.house import House
from manchet.workspace.bakery import Bakery
from manchet.workspace.print_options import PrintOptions


def home_work(bakery: Bakery, formula: Formula, options: PrintOptions, house: House) -> Outcome[HomeWork | None]:
    """None, with the reason, where the size asked for cannot be made.

    What is asked for with options is made; with none, what fits one oven at home. It is a work of its own, in a kitchen
    of its own: no mixer, one scale, and no more kept for the pot than the next build takes.
    """
    order = options.order
    written = bakery.work(formula, AS_WRITTEN, options.kitchen).value
    if written is not None:
        order = order_at_home(written.batch) if order == AS_WRITTEN else order
        less = bakery.work(formula, order, options.kitchen).value
        formula = seed_at_home(formula) if less is not None and less.batch.flour < written.batch.flour else formula
    kitchen = kitchen_at_home(bakery.kitchen_for(formula.place.path, options.kitchen), house.words)
    made = work_of(formula, order, kitchen, bakery.larder)
    if made.value is None:
        return Outcome(None, made.diagnostics)
    return Outcome(HomeWork(made.value, _made_ahead(bakery, made.value)), made.diagnostics)


def _made_ahead(bakery: Bakery, work: Work) -> tuple[Work, ...]:
    """The preparations a work needs, each as much as it needs: what goes into another stands before it."""
    known = {fold(f.name): f for f in bakery.formulas if f.preparation}
    wanted: dict[str, Fraction] = {}
    order: dict[str, None] = {}

    def so_much(key: str, grams: Fraction) -> Work | None:
        return work_of(known[key], Order(dough=grams), work.kitchen, work.larder).value if key in known else None

    def gather(user: Work) -> None:
        for key, grams in preparations_needed(user.batch).items():
            made = so_much(key, grams)
            if made is not None:
                wanted[key] = wanted.get(key, Fraction(0)) + grams
                gather(made)
                order.setdefault(key)

    gather(work)
    return tuple(made for key in order if (made := so_much(key, wanted[key])) is not None)
