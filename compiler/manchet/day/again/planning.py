"""Planning a day again, with a solver or without."""

from __future__ import annotations

from collections.abc import Callable

from manchet.day import goals
from manchet.day.again.fixing import Again
from manchet.day.again.moves import GOALS_AGAIN, cost_again, moves
from manchet.day.again.repair import Plans, plan_kept
from manchet.day.found import FoundPlan, that_holds
from manchet.day.model import Goal, Planned, Timetable

Betters = Callable[[Again, Timetable | None], Planned | None]
"""A solver: what it finds is no worse than the plan it is given."""


def plan_again(again: Again, anew: Plans, better: Betters | None = None) -> FoundPlan:
    """The rest of the day with as little changed as it takes, as far as a plan was found that holds.

    What was planned and still holds, with nothing later or longer or colder than it was to be, is left alone: that a solver now
    finds something better is no reason to send anybody elsewhere.
    """
    kept = plan_kept(again, anew)
    found = FoundPlan(None)
    if kept is not None:
        found = that_holds(again.day, Planned(kept, tuple(goals_again(again, kept)), "by hand"))
    known = None if found.planned is None else kept
    if better is None or (known is not None and _stands(again, known)):
        return found
    return that_holds(again.day, better(again, known)).or_else(found)


def goals_again(again: Again, timetable: Timetable) -> list[Goal]:
    """How good a plan is; how much better another could be isn't known."""
    found = []
    for name, value in zip(GOALS_AGAIN, cost_again(again, timetable), strict=True):
        if name == "room":
            found.append(Goal(name, goals.MOST_ROOM - value, goals.MOST_ROOM, value == 0))
        else:
            found.append(Goal(name, value, 0, value == 0))
    return found


def _stands(again: Again, kept: Timetable) -> bool:
    late, beyond, may_wait, colder, *_ = cost_again(again, kept)
    was_late, waited = goals.late(again.before, again.last), goals.may_wait(again.before, again.last)
    return not moves(again, kept) and late <= was_late and may_wait <= waited and not beyond and not colder
