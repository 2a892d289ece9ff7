"""The latest at which each job of a plan can begin, with all else as it is and at no cost."""

from __future__ import annotations

from manchet.day.explaining import first_holds
from manchet.day.model import Day, Timetable


def latest(day: Day, timetable: Timetable) -> tuple[int, ...]:
    """Minutes of the day, index for index as its jobs: no rule breaks, no wait is longer than its range or than it is, and
    nothing is later than it is."""
    return tuple(
        start + held.minutes for start, held in zip(timetable.starts, first_holds(day, timetable), strict=True)
    )
