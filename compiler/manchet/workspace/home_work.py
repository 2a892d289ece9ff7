"""A sound formula as it is made at home: sized for one domestic oven, with the preparations it needs."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work, work_of
from manchet.checks.mixing.past_a_day import check_at_home
from manchet.diagnostics.outcome import Outcome
from manchet.figures.oven.at_home import kitchen_at_home, order_at_home, seed_at_home
from manchet.formula.model import Formula
from manchet.sheets.form import HomeWork
from manchet.sheets.page.house import House
from manchet.workspace.bakery import Bakery
from manchet.workspace.made_ahead import made_ahead
from manchet.workspace.print_options import PrintOptions


def home_work(bakery: Bakery, formula: Formula, options: PrintOptions, house: House) -> Outcome[HomeWork | None]:
    """None, with the reason, where the size asked for cannot be made, or one oven does not bake it in a day.

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
    made = work_of(formula, order, kitchen, bakery.larder, bakery.preparations)
    if made.value is None:
        return Outcome(None, made.diagnostics)
    at_home = made.value
    past = tuple(check_at_home(at_home))
    if past:
        return Outcome(None, (*made.diagnostics, *past))

    def sized(preparation: Formula, grams: Fraction | None) -> Work | None:
        return work_of(preparation, Order(dough=grams), kitchen, bakery.larder, bakery.preparations).value

    ahead = made_ahead([at_home], bakery.preparations, sized, at_home=True)
    return Outcome(HomeWork(at_home, ahead), made.diagnostics)
