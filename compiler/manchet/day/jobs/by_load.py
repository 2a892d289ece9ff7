"""A dough that goes into the oven in several loads: whether its last pieces can stand until there is room for them."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.day.jobs.values import OvenTurn, WorkOfDay
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class LoadsOfBranch(NamedTuple):
    number: int
    loads: tuple[OvenTurn, ...]


def by_branch(work: WorkOfDay) -> Iterator[LoadsOfBranch]:
    """The loads of the bread itself, branch by branch, where there are several."""
    branches: dict[str, list[OvenTurn]] = {}
    ends = {end.moment for end in work.finished}
    for load in work.loads:
        if load.take in ends or any(gap.before == load.take for gap in work.gaps):
            branches.setdefault(f"{load.stage.key}/{load.branch}", []).append(load)
    for loads in branches.values():
        yield LoadsOfBranch(len(loads), tuple(loads))


def too_far_apart(work: WorkOfDay, kitchen: Kitchen) -> bool:
    """The last load has the oven so much later than the first that its pieces cannot stand so long."""
    recovers = {oven.name: oven.recovers or NOTHING for oven in kitchen.ovens}
    for branch in by_branch(work):
        if branch.number < 2:
            continue
        last = branch.loads[-1]
        apart = sum((load.stays + recovers.get(load.oven, NOTHING) for load in branch.loads[:-1]), NOTHING)
        waits = [gap for gap in work.gaps if gap.after == last.put and gap.most is not None]
        if any(apart > (gap.most or NOTHING) + gap.may - gap.least for gap in waits):
            return True
    return False
