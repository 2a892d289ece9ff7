"""In what order things go into a falling oven, and which goes first if the floor is colder than it should be by then."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.figures.oven.bakes import Bake
from manchet.figures.oven.loading_plan import LoadingPlan, full_load, loading_plan, lost_from
from manchet.kitchen.model import Oven
from manchet.records import NamedTuple

STEP = Fraction(5)
"""Degrees Celsius a floor's thermometer is read to. Our rule."""
FAR = 12
"""Such steps under the planned heat that are looked at: a floor colder by more than 60 C is another day's oven."""
NEXT = 3
"""Of the bakes that follow so many are looked at."""


def by_heat(bakes: Sequence[Bake]) -> tuple[Bake, ...]:
    """The hottest first, and of equals the one whose time is over first: the trade's order."""
    return tuple(sorted(bakes, key=lambda b: (-b.heat.likely, -b.wants[0], b.formula, b.stage, b.noun)))


def loading_order(bakes: Sequence[Bake], oven: Oven) -> LoadingPlan:
    """The plan that loses fewest loads to the cold: by heat, unless what can do with less heat may let others go first.

    From the order by heat, and from the one by the coldest heat each may go in at, what comes too late changes places with
    the one before it as long as that saves a load; so it never loses more than by heat.
    """
    full = full_load(bakes)
    orders = [by_heat(bakes), tuple(sorted(by_heat(bakes), key=lambda b: (-b.wants[0], -b.wants[1])))]
    plans = [loading_plan(order, oven, full) for order in orders]
    if not plans[0].lost:
        return plans[0]
    plans += [_better(order, plan, oven, full) for order, plan in zip(orders, plans, strict=True)]
    return min(plans, key=lambda plan: plan.lost)


def _better(order: tuple[Bake, ...], plan: LoadingPlan, oven: Oven, full: Fraction) -> LoadingPlan:
    """What is late changes places with its neighbour where that saves a load, once for each bake at most."""
    for _ in order:
        before = plan.lost
        for changed in _sooner(order, plan):
            found = loading_plan(changed, oven, full)
            if found.lost < plan.lost:
                order, plan = changed, found
                break
        if plan.lost in (before, 0):
            break
    return plan


def _sooner(order: tuple[Bake, ...], plan: LoadingPlan) -> Iterator[tuple[Bake, ...]]:
    """The orders in which one late bake goes in a place sooner."""
    late = {load.bake for load in plan.late}
    for at in range(1, len(order)):
        if order[at] in late:
            yield (*order[: at - 1], order[at], order[at - 1], *order[at + 1 :])


class First(NamedTuple):
    """If the floor is under that heat, in Celsius, this goes in first."""

    under: Fraction
    bake: Bake


def first_if_colder(plan: LoadingPlan, at: int) -> First | None:
    """What goes in before the `at`th load of a plan if the floor is colder than planned: the hottest reading at which one
    of the next bakes can go in at once and saves a load that this bake would make too late. None: nothing is won."""
    load = plan.loads[at]
    if load.number > 1:
        return None
    others = [bake for bake in dict.fromkeys(one.bake for one in plan.loads[at:]) if bake != load.bake][:NEXT]
    reading = Fraction(load.into.celsius // STEP) * STEP
    for _ in range(FAR):
        for other in (bake for bake in others if reading <= bake.wants[1]):
            kept = lost_from((load.bake, other), plan.oven, plan.full, reading)
            changed = lost_from((other, load.bake), plan.oven, plan.full, reading)
            if changed < kept:
                return First(min(reading + STEP, other.wants[1]), other)
        reading -= STEP
    return None
