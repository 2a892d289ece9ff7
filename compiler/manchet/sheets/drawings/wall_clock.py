"""What the clock on the wall shows under a drawing of hours, also on a night on which it jumps."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from manchet.records import NamedTuple

A_DAY = 1440


class WallClock(NamedTuple):
    """Minutes count from the beginning of a drawing."""

    begins: int
    """The minute of the day that the clock then shows."""
    jumps: tuple[tuple[int, int], ...] = ()
    """At which minute it jumps, and by how many minutes."""

    def shows(self, minute: int) -> int:
        """The minute of the day."""
        return (self.begins + minute + sum(by for at, by in self.jumps if at <= minute)) % A_DAY

    def said(self, minute: int) -> str:
        hour, minute = divmod(self.shows(minute), 60)
        return f"{hour:02}:{minute:02}"

    def every(self, minutes: int, last: int) -> Iterator[int]:
        """The minutes up to the `last` at which it shows a full multiple of so many minutes of the day."""
        bounds = [0, *(at for at, _ in self.jumps if 0 < at <= last), last + 1]
        for begin, end in pairwise(bounds):
            yield from range(begin + -self.shows(begin) % minutes, end, minutes)
