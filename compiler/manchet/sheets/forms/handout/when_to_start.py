"""When to start what: for a few times at which the bread is wanted ready, with few jobs at night."""

from __future__ import annotations

from fractions import Fraction

from manchet.sheets.forms.handout.view import HomeTime, StartRow, WhenToStart
from manchet.sheets.page.measures import Measures
from manchet.timing.at_home import Begins, HomeCourse, ReadyAt, ready_times

DAY, MINUTES = 24 * 60, 5
"""Minutes of a day; what a start is rounded to, to the earlier side."""


def when_to_start(course: HomeCourse, m: Measures) -> WhenToStart | None:
    if not course.begins:
        return None
    ready = ready_times(course)
    rows = tuple(
        StartRow(_what(one, m), tuple(_before(one.before, at, m) for at in ready)) for one in _in_order(course)
    )
    return WhenToStart(tuple(_before(Fraction(0), at, m) for at in ready), rows)


def _in_order(course: HomeCourse) -> list[Begins]:
    return sorted(course.begins, key=lambda one: -one.before)


def _what(one: Begins, m: Measures) -> str:
    """`poolish`, `divide`, `oven on`, `bake rolls`"""
    if one.what in ("ahead", "stage"):
        return one.name
    return " ".join(part for part in (m.words["handout.start_" + one.what], one.name) if part)


def _before(seconds: Fraction, ready: ReadyAt, m: Measures) -> HomeTime:
    """`Fri 06:10`: so long before it is ready."""
    minutes = ready.weekday * DAY + ready.hour * 60 - int(-(-seconds // 60))
    days, minute = divmod(minutes // MINUTES * MINUTES, DAY)
    day = m.words.several("days.names")[days % 7]
    return HomeTime(day[:3], f"{minute // 60:02}:{minute % 60:02}")
