"""What no plan of a day does better than: seen without looking for one."""

from __future__ import annotations

from manchet.day.goals import GOALS, MOST_ROOM, cost
from manchet.day.model import Day, Goal, Timetable
from manchet.day.posting.outset import Leave, net_of, outset_of


def goals_of(day: Day, timetable: Timetable) -> tuple[Goal, ...]:
    """How good a plan is; a goal is proven where it is as good as its bound, and all before it are proven."""
    bounds = _bounds(day, timetable)
    goals: list[Goal] = []
    for name, value, bound in zip(GOALS, cost(day, timetable), bounds, strict=True):
        proven = value == bound and all(goal.proven for goal in goals)
        if name == "room":
            goals.append(Goal(name, MOST_ROOM - value, MOST_ROOM - bound, proven))
        else:
            goals.append(Goal(name, value, bound, proven))
    return tuple(goals)


def _bounds(day: Day, timetable: Timetable) -> tuple[int, ...]:
    """Each job by itself at its earliest for lateness, and at its latest for age; what is late is late as in the plan."""
    all_may = tuple(wait.may for wait in day.waits)
    ever = net_of(outset_of(day), Leave((day.finishes - day.begins,) * len(day.ends), all_may))
    late = sum(max(ever.low[end.job] + day.jobs[end.job].minutes + end.after - end.due, 0) for end in day.ends)
    is_late = cost(day, timetable)[0]
    held = net_of(outset_of(day), Leave((is_late,) * len(day.ends), all_may))
    age = sum(max(end.due - held.high[end.job] - day.jobs[end.job].minutes, 0) for end in day.ends)
    fires = {fire.light for fire in day.fires}
    early = sum(
        day.finishes - held.high[at] if at in fires else held.low[at] - day.begins
        for at, job in enumerate(day.jobs)
        if not job.is_break
    )
    return late, 0, 0, 0, age, early
