"""Breaks parted from the plan: no job waits for one, so each is put where it does most good, in the middle of its shift's work."""

from __future__ import annotations

from manchet.day.goals import span_of
from manchet.day.model import BREAK_BEFORE_OUT, Day, Timetable


def breaks_in_the_middle(day: Day, timetable: Timetable) -> Timetable:
    """The same plan with each break as near to the middle of what its shift works as its hands and the oven leave it."""
    for job, each in enumerate(day.jobs):
        span = span_of(day, timetable, timetable.shifts[job]) if each.is_break else None
        if span is None:
            continue
        middle = (span[0] + span[1] - each.minutes) // 2
        minutes = sorted(range(each.earliest, each.latest + 1), key=lambda minute: (abs(minute - middle), minute))
        for minute in minutes:
            starts = (*timetable.starts[:job], minute, *timetable.starts[job + 1 :])
            if _may_be(day, timetable._replace(starts=starts), job):
                timetable = timetable._replace(starts=starts)
                break
    return timetable


def _may_be(day: Day, timetable: Timetable, rest: int) -> bool:
    """The shift has a pair of hands less meanwhile, nothing comes out then or shortly after, and no wait binds it."""
    shift = timetable.shifts[rest]
    begins, ends = timetable.starts[rest], timetable.starts[rest] + day.jobs[rest].minutes
    if not day.shifts[shift].begins <= begins <= ends <= day.shifts[shift].ends:
        return False
    if any(begins < timetable.starts[load.take] < ends + BREAK_BEFORE_OUT for load in day.loads):
        return False
    mine = [
        (timetable.starts[at], timetable.starts[at] + job.minutes, job.hands)
        for at, job in enumerate(day.jobs)
        if timetable.shifts[at] == shift and timetable.starts[at] < ends and begins < timetable.starts[at] + job.minutes
    ]
    return all(
        sum(hands for first, last, hands in mine if first <= minute < last) <= day.shifts[shift].hands
        for minute in {begins, *(first for first, _, _ in mine if first > begins)}
    )
