"""The plan of a day without a solver: always there, the same for the same day.

The loads of ovens that hold their heat are sorted by themselves first. Then all jobs begin as late as they can. Where two
clash, at an oven, a mixer, a place or for want of hands, one goes before the other: the one that is moved least against its
room. All windows are pulled tight again, and so on until nothing clashes. From a dead end the way leads back to the last choice
that had a part in it. Where no way is found, first waits go beyond their ranges as far as they may, then an end is late, each
by as little as undoes what stood in the way; and what turns out not to be needed is taken back: what stands against that is
decided anew.
"""

from __future__ import annotations

from manchet.day.model import Day, Planned
from manchet.day.posting.bounds import goals_of
from manchet.day.posting.by_hand import Planner
from manchet.day.posting.net import Conflict
from manchet.records import NamedTuple

ENGINE = "by hand"


class NotPlanned(NamedTuple):
    """No plan was found."""

    conflicts: tuple[Conflict, ...]
    """What stood against each way on from the last dead end, in ties and bounds between numbered jobs."""
    is_impossible: bool
    """There is none, however late anything may be."""


def plan_by_hand(day: Day) -> Planned | NotPlanned:
    """A plan that keeps every rule of the day; late, or with waits beyond their ranges, only where none else was found."""
    planner = Planner(day)
    way = planner.plan()
    if not way.found:
        return NotPlanned(way.conflicts or way.behind, way.is_proven)
    timetable = planner.timetable(way)
    return Planned(timetable, goals_of(day, timetable), ENGINE)
