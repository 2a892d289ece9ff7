"""A day with one thing eased: a bread left out, due later, or more hands for some hours."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.day.clashes.less import without
from manchet.day.clashes.values import Remedy
from manchet.day.model import Day, Shift

Hours = tuple[tuple[int, int], ...]


def later(day: Day, bread: str, by: int) -> Day:
    """A bread due so many minutes later; it may be out as soon as before."""
    return day._replace(
        ends=tuple(
            end._replace(due=end.due + by, oldest=None if end.oldest is None else end.oldest + by)
            if bread in ("", end.bread)
            else end
            for end in day.ends
        )
    )


def with_hands(day: Day, hours: Hours) -> Day:
    """One more person in each of these hours."""
    first = len(day.shifts)
    more = (Shift(f"more hands {first + number}", "more hands", 1, *each) for number, each in enumerate(hours))
    return day._replace(shifts=(*day.shifts, *more))


def with_longer_shift(day: Day, shift: int, begins: int, ends: int) -> Day:
    """One shift from and until other minutes; before the first shift of a day as it is written nothing could begin."""
    shifts = tuple(its._replace(begins=begins, ends=ends) if at == shift else its for at, its in enumerate(day.shifts))
    jobs = tuple(job._replace(earliest=begins) if begins < job.earliest == day.begins else job for job in day.jobs)
    return day._replace(shifts=shifts, jobs=jobs, begins=min(day.begins, begins), finishes=max(day.finishes, ends))


def eased_day(day: Day, changes: Sequence[Remedy]) -> Day:
    """With all of these changes made; each is "without" a bread, "later", or "hands"."""
    for change in changes:
        if change.kind == "without":
            day = without(day, frozenset({change.bread}))
        elif change.kind == "later":
            day = later(day, change.bread, change.minutes)
        else:
            day = with_hands(day, change.hours)
    return day
