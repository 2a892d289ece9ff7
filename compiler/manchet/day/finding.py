"""The plan of a day from whichever ways of planning there are; none is passed on that the checker refuses."""

from __future__ import annotations

from importlib.util import find_spec

from manchet.day.again.planning import Betters
from manchet.day.breaks import breaks_in_the_middle
from manchet.day.found import FoundPlan, that_holds
from manchet.day.goals import cost, late
from manchet.day.model import Day, Planned

LOOKED_FOR, SECONDS = 5, 15
"""How long a plan that is on time is looked for, where the way without the solver found none: work as the solver counts it, and by
the clock."""


MANY_JOBS = 200
"""From so many jobs on a late plan is not looked for where sums rule out one that is on time: that takes longer than anybody waits.
Our own rule."""


def has_solver() -> bool:
    return find_spec("ortools") is not None


def find_plan(day: Day, with_solver: bool = True) -> FoundPlan:
    """A plan without the solver, made better with it where it is installed."""
    from manchet.day.clashes.sums import cannot_be

    if cannot_be(day):
        return FoundPlan(None)  # however late anything were: nobody looks for what sums rule out
    found = _find(day, with_solver)
    if found.planned is None or not any(job.is_break for job in day.jobs):
        return found
    parted = found.planned._replace(timetable=breaks_in_the_middle(day, found.planned.timetable))
    return that_holds(day, parted).or_else(found)


def _find(day: Day, with_solver: bool) -> FoundPlan:
    from manchet.day.posting import plan_by_hand

    by_hand = plan_by_hand(day)
    found = that_holds(day, by_hand if isinstance(by_hand, Planned) else None)
    if not with_solver or not has_solver():
        return found
    if found.planned is None or late(day, found.planned.timetable):
        on_time = that_holds(day, _plan_on_time(day))
        found = on_time.or_else(found)
        if on_time.planned is None:
            return found
    return _made_better(day, found)


def find_plan_soon(day: Day, with_solver: bool = True) -> FoundPlan:
    """The same, for whoever waits for the answer: a large day that can't be on time isn't planned late."""
    from manchet.day.clashes.less import on_time
    from manchet.day.clashes.sums import cannot_be

    if len(day.jobs) >= MANY_JOBS and cannot_be(on_time(day)):
        return FoundPlan(None)
    return find_plan(day, with_solver)


def _made_better(day: Day, found: FoundPlan) -> FoundPlan:
    """By the solver, from the plan that was found on."""
    from manchet.day.solving.search import planned_by_solver

    assert found.planned is not None
    known = found.planned.timetable
    solved = that_holds(day, planned_by_solver(day, known).planned)
    if solved.planned is not None and cost(day, known) < cost(day, solved.planned.timetable):
        return found
    return solved.or_else(found)


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
