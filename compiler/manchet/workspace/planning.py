"""A plan of the bakery worked out: its breads sized in its kitchen, and all of them as one day."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.order import Order
from manchet.batch.work import Work, work_of
from manchet.day.jobs.day_of import Bread, PlannedDay, day_of
from manchet.day.said import Plan, Want
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.formula.model import Formula
from manchet.formula.nouns import same_noun
from manchet.workspace.bakery import Bakery
from manchet.workspace.breads_of_dishes import with_breads_of_dishes
from manchet.workspace.made_ahead import made_ahead


def day_planned(plan: Plan, bakery: Bakery) -> Outcome[PlannedDay | None]:
    """The day that a plan of this bakery asks for; None, with the reason, where a bread of it cannot be sized."""
    breads, reports = _sized(plan.wants, plan, bakery)
    dishes = [(bread.want, bread.work) for bread in breads if bread.work.formula.dish]
    if dishes:
        wants = with_breads_of_dishes(plan, dishes)
        plan = plan._replace(wants=wants)
        breads, reports = _sized(wants, plan, bakery)
    if len(breads) < len(plan.wants):
        return Outcome(None, tuple(reports))

    def sized(preparation: Formula, grams: Fraction | None) -> Work | None:
        return work_of(preparation, Order(dough=grams), plan.kitchen, bakery.larder, bakery.preparations).value

    wanted = {bread.work.formula.name for bread in breads}
    users = [bread.work for bread in breads]
    ahead = [
        one.work
        for one in made_ahead(users, bakery.preparations, sized, at_home=False)
        if one.work.formula.name not in wanted
    ]
    return Outcome(day_of(plan, breads, ahead), tuple(reports))


def _sized(wants: Iterable[Want], plan: Plan, bakery: Bakery) -> Outcome[list[Bread]]:
    """The work of each, in the plan's kitchen; without what cannot be sized, and why."""
    breads: list[Bread] = []
    reports: list[Diagnostic] = []
    for want in wants:
        formula = bakery.formula(want.name)
        if formula is None:
            continue  # its own file says why
        made = work_of(formula, order_of(want, formula), plan.kitchen, bakery.larder, bakery.makings(formula))
        reports += made.diagnostics
        if made.value is not None:
            breads.append(Bread(want, made.value))
    return Outcome(breads, tuple(reports))


def order_of(want: Want, formula: Formula) -> Order:
    """So many of each sort; what the formula makes besides and nobody wants is not made."""
    if want.grams is not None:
        return Order(dough=want.grams)
    nobody = tuple(
        (Fraction(0), makes.noun)
        for makes in formula.makes
        if not any(same_noun(noun, makes.noun) for _, noun in want.pieces)
    )
    return Order(pieces=(*want.pieces, *nobody))
