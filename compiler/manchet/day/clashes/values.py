"""What is said of a day that can't be done, and what is asked to find it out."""

from __future__ import annotations

from collections.abc import Callable

from manchet.day.model import Day, Timetable
from manchet.records import NamedTuple

Hour = Callable[[int], str]
"""How a minute of the day is written: "Sat 01:48". The caller's, since a day knows no clock."""


class Reply(NamedTuple):
    """Whether there is a plan."""

    timetable: Timetable | None
    is_certain: bool
    """A plan was found, or it is proven that there is none."""


Ask = Callable[[Day], Reply]


class Remedy(NamedTuple):
    """One change with which the day can be done, nothing else changed."""

    kind: str
    """"later", "longer waits", "hands", "shift", "fire", "places", "deck", "mixer", "without", or "together" of several changes."""
    words: str
    bread: str = ""
    minutes: int = 0
    """How much later, how much longer, how many more places, or how long hands are wanted."""
    hours: tuple[tuple[int, int], ...] = ()
    """From when to when hands are wanted, or one shift is longer."""
    parts: tuple[Remedy, ...] = ()
    """Of changes that help together alone: each of them."""


class DayClash(NamedTuple):
    """Something that can't be, in words."""

    head: str
    breads: tuple[str, ...]
    """Whose it is."""
    how: str
    """"seen" without search, "counted" in sums of minutes, or "searched"."""
    is_certain: bool = True
    """Proven; False where no plan was found and nothing more is known."""
    reasons: tuple[str, ...] = ()
    """Whatever is done, one of these comes of it."""
    remedies: tuple[Remedy, ...] = ()
    """Where several things clash: what would mend this one, were there no other."""

    @property
    def words(self) -> str:
        """All of it as one sentence."""
        told = f"either {', or '.join(self.reasons)}" if len(self.reasons) > 1 else "".join(self.reasons)
        return f"{self.head}: {told}" if told else self.head


class Clashes(NamedTuple):
    """The answer of a day that can't be done."""

    clashes: tuple[DayClash, ...]
    remedies: tuple[Remedy, ...]
    useless: tuple[str, ...]
    """In words: the changes that don't help by themselves."""
    is_certain: bool = True
    """What doesn't help is proven not to; False where no plan was found with it, and nothing more is known."""
    is_finished: bool = True
    """False: the time was up before every change was tried."""
