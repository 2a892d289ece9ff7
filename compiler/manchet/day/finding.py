"""The plan of a day from whichever ways of planning there are; none is passed on that the checker refuses."""

from __future__ import annotations

from importlib.util import find_spec

from manchet.day.again.planning import Betters
from manchet.day.checking import check_planned
from manchet.day.goals import cost, late
from manchet.day.model import Day, Planned
from manchet.day.rules.refusal import Refusal
from manchet.records import NamedTuple


class FoundPlan(NamedTuple):
    """The best plan that was found."""

    planned: Planned | None
    is_impossible: bool = False
    """Proven: there is none, however late."""
    refused: tuple[Refusal, ...] = ()
    """What the checker found in a plan of ours, which was left out: a fault of Manchet's own."""


LOOKED_FOR, SECONDS = 5, 15
"""How long a plan that is on time is looked for, where the way without the solver found none: work as the solver counts it, and by
the clock."""


def has_solver() -> bool:
    return find_spec("ortools") is not None


def find_plan(day: Day, with_solver: bool = True) -> FoundPlan:
    """A plan without the solver, made better with it where it is installed."""
    from manchet.day.posting import plan_by_hand

    refused: tuple[Refusal, ...] = ()
    first = plan_by_hand(day)
    known = first if isinstance(first, Planned) else None
    if known is not None:
        refused = check_planned(day, known)
        known = None if refused else known
    if not with_solver or not has_solver():
        return FoundPlan(known, False, refused)
    from manchet.day.solving.search import planned_by_solver

    if known is None or late(day, known.timetable):
        on_time = _plan_on_time(day)
        if on_time is None:
            return FoundPlan(known, False, refused)
        known = on_time
    answer = planned_by_solver(day, known.timetable)
    if answer.planned is None:
        return FoundPlan(known, answer.is_impossible, refused)
    wrong = check_planned(day, answer.planned)
    if wrong:
        return FoundPlan(known, False, (*refused, *wrong))
    if known is not None and cost(day, known.timetable) < cost(day, answer.planned.timetable):
        return FoundPlan(known, False, refused)
    return FoundPlan(answer.planned, False, refused)


def _plan_on_time(day: Day) -> Planned | None:
    """Some plan by the solver in which nothing is late: sums before search, so that a day that can't be on time is not made better
    for a minute first."""
    from manchet.day.clashes.less import on_time
    from manchet.day.clashes.seen import clashes_seen
    from manchet.day.clashes.sums import clashes_counted
    from manchet.day.solving.search import Limits, feasible_by_solver

    strict = on_time(day)
    if clashes_seen(strict, str) or clashes_counted(strict, str):
        return None
    return feasible_by_solver(strict, Limits(first=LOOKED_FOR, seconds=SECONDS)).planned


def better_by_solver() -> Betters | None:
    """How the solver plans a day again; None where it is not installed."""
    if not has_solver():
        return None
    from manchet.day.solving.again import plan_again_by_solver

    return plan_again_by_solver
