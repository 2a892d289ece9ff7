"""What a rule of the day says where a plan breaks it, and the few words all rules use."""

from __future__ import annotations

from manchet.day.model import Day, Timetable
from manchet.records import NamedTuple


class Refusal(NamedTuple):
    """A rule that a plan breaks. Nothing that is refused is printed: it is a fault of Manchet's own."""

    rule: str
    words: str
    jobs: tuple[int, ...] = ()
    loads: tuple[int, ...] = ()
    minute: int | None = None
    """The first at which it is broken; None where it is of no one minute."""
    where: str = ""
    """The place that is too full."""


def ends_of(day: Day, timetable: Timetable) -> tuple[int, ...]:
    """The minute after each job's last."""
    return tuple(start + job.minutes for start, job in zip(timetable.starts, day.jobs, strict=True))
