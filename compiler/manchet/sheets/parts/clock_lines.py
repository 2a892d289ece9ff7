"""That the clocks change while the work goes on: a line, the same on every form that has clocks."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.sheets.page.measures import Measures
from manchet.timing.zones import ClockChange


def clock_lines(changes: Iterable[ClockChange], m: Measures) -> tuple[str, ...]:
    """`Clocks go back, Sun 02:00 → 01:00: waits keep their length, and every time is what the wall clock will show.`"""
    return tuple(
        m.words.say(
            "clocks.go_forward" if change.minutes > 0 else "clocks.go_back",
            m.words.several("days.short")[change.before.weekday()],
            m.clock(change.before),
            m.clock(change.after),
        )
        for change in changes
    )
