"""What a timing card says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Fact


class JobLine(NamedTuple):
    """A line of the card. `day` is "" except where a new day begins."""

    clock: str
    elapsed: str
    job: str
    where: str = ""
    who: str = ""
    look: str = ""
    latest: str = ""
    moves: str = ""
    """What moves if it is later still."""
    late: tuple[str, ...] = ()
    """What becomes of 15, 30 and 45 minutes, a line each."""
    gives: str = ""
    """Whether it stretches, shortens, may wait or must not."""
    critical: bool = False
    """On the longest way through the work."""
    tight: bool = False
    """No slack at all."""
    day: str = ""


class BulkTime(NamedTuple):
    """`the dough came out at 26 °C`: then about so long in bulk."""

    degrees: str
    bulk: str


class YeastCell(NamedTuple):
    """What to weigh, and small its per cent; both "" where nothing can be said. `written`: as the file has it."""

    weight: str
    percent: str
    written: bool


class YeastRow(NamedTuple):
    """The yeast for one wait at each warmth."""

    hours: str
    cells: tuple[YeastCell, ...]
    """One for each of `degrees`."""


class YeastTable(NamedTuple):
    """The yeast of one stage for other hours and degrees than the file's."""

    title: str
    degrees: tuple[str, ...]
    rows: tuple[YeastRow, ...]
    note: str


class DayBar(NamedTuple):
    """A stretch of the picture, in its units: where it begins, how wide, which ink, what is written at which height."""

    x: str
    width: str
    y: str
    ink: str
    """hands, machine, wait, oven or cold: the name of a pattern, never a user's word."""
    text: str
    text_x: str
    text_y: str


class DayLane(NamedTuple):
    """A row of the picture: one product, oven, mixer or person."""

    title: str
    y: str
    text_y: str
    bars_foot: str
    foot: str
    bars: tuple[DayBar, ...]


class HourMark(NamedTuple):
    """An hour, marked along the foot of the picture."""

    x: str
    text: str
    day: str = ""


class InkKey(NamedTuple):
    """One ink of the key under the picture, and its word."""

    ink: str
    word: str
    x: str
    y: str
    text_x: str
    text_y: str


class DayPicture(NamedTuple):
    """The day drawn: numbers are the drawing's own units, already text."""

    width: str
    height: str
    foot: str
    ticks: tuple[HourMark, ...]
    lanes: tuple[DayLane, ...]
    keys: tuple[InkKey, ...]
    words: str
    """The same in words, for a screen reader."""
    note: str = ""
    """What must be known to read it."""


class TimingCard(NamedTuple):
    """One formula by the clock: its jobs, until when each may begin, and what to do if it is late."""

    title: str
    language: str
    paper: str
    running: Running
    head: tuple[Fact, ...]
    jobs: tuple[JobLine, ...]
    warmths: tuple[BulkTime, ...]
    before: tuple[str, ...]
    """Before you go."""
    pictures: tuple[DayPicture, ...]
    notes: tuple[str, ...] = ()
    form: Literal["card"] = "card"
    untimed: str = ""
    """That some jobs stand there with no length; it is read before the clock times are."""
    swapped: tuple[str, ...] = ()
    """What was swapped, as on the prep sheet."""
    yeasts: tuple[YeastTable, ...] = ()
