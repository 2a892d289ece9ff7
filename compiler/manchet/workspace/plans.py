"""The plans and standing orders of a bakery, read for the breads, kitchens and stages that it has."""

from __future__ import annotations

from datetime import date

from manchet.day.breads import Menu, things_made
from manchet.day.reading import Sources, patterns_of, plan_of
from manchet.day.said import Plan
from manchet.day.standing import StandingOrder, standing_order_of
from manchet.day.wants import mistakes_in_order
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.workspace.house import Kitchens
from manchet.workspace.top_blocks import TopBlocks


class PlanSources(NamedTuple):
    """What plans are read from. `only` are the paths whose plans are read, None for all; `named` is the kitchen asked for, "" for none; `names` those of all formulas, in
    files that are not read too."""

    blocks: TopBlocks
    kitchens: Kitchens
    larder: Larder
    only: frozenset[str] | None = None
    named: str = ""
    names: frozenset[str] = frozenset()


def plans_of(sources: PlanSources, on: date | None = None) -> Outcome[tuple[Plan, ...]]:
    """Every sound plan that has a date, in the order of files and lines; and what is wrong with the others and with the orders.
    With `on`, the patterns too, as if they were of that day."""
    blocks = sources.blocks
    reports: list[Diagnostic] = []
    orders: list[StandingOrder] = []
    menu = Menu(blocks.formulas, (*blocks.preparations, *blocks.assemblies), sources.names)
    for block in blocks.orders:
        order, found = standing_order_of(block)
        orders.append(order)
        reports += (*found, *mistakes_in_order(order, menu))
    stages = things_made(blocks.stages)
    around = Sources(menu, tuple(orders), stages, sources.larder, patterns_of(blocks.plans))
    plans: list[Plan] = []
    for block in blocks.plans:
        if sources.only is not None and block.line.path not in sources.only:
            continue
        kitchen = sources.kitchens.for_plan(block.line.path, sources.named)
        plan, found = plan_of(block, around, kitchen, on)
        # A line that a pattern lends is read for its own day and for each plan that is like it.
        told = {(one.name, one.place) for one in reports}
        reports += (one for one in found if (one.name, one.place) not in told)
        plans += [] if plan is None else [plan]
    return Outcome(tuple(plans), tuple(reports))
