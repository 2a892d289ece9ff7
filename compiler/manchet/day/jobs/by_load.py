"""A dough that goes into the oven in several loads: whether its last pieces can stand until there is room for them."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.jobs.values import OvenTurn, WorkOfDay
from manchet.kitchen.model import Kitchen

NOTHING = Fraction(0)


def by_branch(work: WorkOfDay) -> tuple[tuple[OvenTurn, ...], ...]:
    """The loads of the bread itself, branch by branch."""
    branches: dict[str, list[OvenTurn]] = {}
    ends = {end.moment for end in work.finished}
    for load in work.loads:
        if load.take in ends or any(gap.before == load.take for gap in work.gaps):
            branches.setdefault(f"{load.stage.key}/{load.branch}", []).append(load)
    return tuple(tuple(loads) for loads in branches.values())


def too_far_apart(work: WorkOfDay, kitchen: Kitchen) -> bool:
    """The last load has the oven so much later than the first that its pieces cannot stand so long."""
    recovers = {oven.name: oven.recovers or NOTHING for oven in kitchen.ovens}
    for *others, last in by_branch(work):
        apart = sum((load.stays + recovers.get(load.oven, NOTHING) for load in others), NOTHING)
        waits = [gap for gap in work.gaps if gap.after == last.put and gap.most is not None]
        if any(apart > (gap.most or NOTHING) + gap.may - gap.least for gap in waits):
            return True
    return False
