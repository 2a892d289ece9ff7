"""The plan of a day from whichever ways of planning there are; none is passed on that the checker refuses."""

from __future__ import annotations

from importlib.util import find_spec

from manchet.day.again.planning import Betters
from manchet.day.checking import check_planned
from manchet.day.goals import cost
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

    answer = planned_by_solver(day, None if known is None else known.timetable)
    if answer.planned is None:
        return FoundPlan(known, answer.is_impossible, refused)
    wrong = check_planned(day, answer.planned)
    if wrong:
        return FoundPlan(known, False, (*refused, *wrong))
    if known is not None and cost(day, known.timetable) < cost(day, answer.planned.timetable):
        return FoundPlan(known, False, refused)
    return FoundPlan(answer.planned, False, refused)


def better_by_solver() -> Betters | None:
    """How the solver plans a day again; None where it is not installed."""
    if not has_solver():
        return None
    from manchet.day.solving.again import plan_again_by_solver

    return plan_again_by_solver
