"""The day along a line: a lane for each stage, branch and oven, with a clock that runs evenly, and is cut where nothing happens."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import Art, box, breadth, line, n, path_of, words
from manchet.sheets.drawings.wall_clock import A_DAY, WallClock

WIDTH = 596.0
"""Of paper, in units: 188 mm, which is the room on A4."""
LETTER = 9.0
LANE, BAR = 12.0, 8.6
CUT = 9.0
"""How wide a cut is."""
FINE = 0.7
LONG = 270
"""Minutes without a beginning or an end from which on the line is cut."""
KEPT = 75
"""Minutes that are left at each side of a cut."""
HOURS = (1, 2, 3, 4, 6, 12)


class Bar(NamedTuple):
    """A stretch of a lane, in minutes from the beginning.

    `ink` is "work" (black), "alone" (outline), "cold" (ruled), "rises" (a black wedge: an oven is heated) or
    "bakes" (black).
    """

    start: int
    end: int
    ink: str
    text: str = ""


class Lane(NamedTuple):
    title: str
    bars: tuple[Bar, ...]


class LineCut(NamedTuple):
    """Minutes that are left out."""

    start: int
    end: int


def cuts_of(lanes: Sequence[Lane]) -> list[LineCut]:
    """Where in none of the lanes anything begins or ends for long."""
    events = sorted({at for lane in lanes for bar in lane.bars for at in (bar.start, bar.end)})
    gaps = pairwise(events)
    return [LineCut(one + KEPT, other - KEPT) for one, other in gaps if other - one > LONG]


class Axis:
    """Where a minute stands across the paper."""

    def __init__(self, lanes: Sequence[Lane]) -> None:
        self.cuts = cuts_of(lanes)
        self.left = 6 + max(breadth(lane.title, LETTER) for lane in lanes)
        self.last = max(bar.end for lane in lanes for bar in lane.bars)
        drawn = self.last - sum(cut.end - cut.start for cut in self.cuts)
        self.scale = (WIDTH - self.left - 8 - CUT * len(self.cuts)) / max(1, drawn)

    def at(self, minute: float) -> float:
        x = self.left
        gone = 0.0
        for cut in self.cuts:
            if minute <= cut.start:
                break
            if minute < cut.end:
                return x + (cut.start - gone) * self.scale + CUT * (minute - cut.start) / (cut.end - cut.start)
            x += (cut.start - gone) * self.scale + CUT
            gone = cut.end
        return x + (minute - gone) * self.scale

    def is_shown(self, minute: float) -> bool:
        return 0 <= minute <= self.last and not any(cut.start < minute < cut.end for cut in self.cuts)


def day(lanes: Sequence[Lane], clock: WallClock, cut_word: str) -> Art:
    """`clock` is what the wall shows from the beginning of the line on; `cut_word` is `{} h cut`, to stand under each cut."""
    axis = Axis(lanes)
    foot = 2 + LANE * len(lanes)
    parts = [*_midnights(axis, clock, foot)]
    for at, lane in enumerate(lanes):
        parts += _lane(lane, 2 + LANE * at, axis)
    parts.append(line(f"M{n(axis.left)} {n(foot)} H{n(axis.at(axis.last))}", FINE))
    parts += _hours(axis, clock, foot)
    for cut in axis.cuts:
        x = axis.at(cut.start)
        parts.append(
            f'<path d="M{n(x)} {n(foot + 3)} L{n(x + 2)} 0 H{n(x + CUT)} L{n(x + CUT - 2)} {n(foot + 3)}Z" fill="#fff" stroke="none"/>'
        )
        for edge in (x, x + CUT - 2):
            parts.append(line(f"M{n(edge)} {n(foot + 3)} L{n(edge + 2)} 0", 1.2))
        hours = round((cut.end - cut.start) / 60)
        parts.append(words(x + CUT / 2, foot + 22, cut_word.replace("{}", str(hours)), LETTER))
    high = foot + (25 if axis.cuts else 14)
    return Art(WIDTH, high, "".join(parts))


def _lane(lane: Lane, y: float, axis: Axis) -> Iterator[str]:
    yield words(0, y + BAR - 1, lane.title, LETTER, "start")
    for bar in sorted(lane.bars, key=lambda bar: bar.ink in ("work", "bakes")):
        yield from _bar(bar, y, axis)


def _bar(bar: Bar, y: float, axis: Axis) -> Iterator[str]:
    x, end = axis.at(bar.start), axis.at(bar.end)
    foot = y + BAR
    if bar.ink == "rises":
        yield f'<path d="{path_of([(x, foot), (end, y), (end, foot)], close=True)}" fill="#000" stroke="none"/>'
    elif bar.ink in ("work", "bakes"):
        yield f'<rect x="{n(x)}" y="{n(y)}" width="{n(max(1.4, end - x))}" height="{n(BAR)}" fill="#000" stroke="none"/>'
    else:
        yield box(x, y, max(1.4, end - x), BAR, FINE, "#fff")
        room = breadth(bar.text, LETTER) + 4
        holds = bool(bar.text) and room <= end - x
        if bar.ink == "cold":
            for height in (BAR / 3, BAR * 2 / 3):
                yield line(f"M{n(x)} {n(y + height)} H{n(end)}", FINE / 2)
        if holds and not any(cut.start < bar.end and cut.end > bar.start for cut in axis.cuts):
            yield _lettered(bar, (x + end) / 2, y, room)
        elif holds or bar.text:
            yield from _beside_a_cut(bar, y, axis, room)


def _lettered(bar: Bar, middle: float, y: float, room: float) -> str:
    """The word, on white where the bar is ruled."""
    ground = ""
    if bar.ink == "cold":
        ground = f'<rect x="{n(middle - room / 2)}" y="{n(y + 0.6)}" width="{n(room)}" height="{n(BAR - 1.2)}" fill="#fff" stroke="none"/>'
    return ground + words(middle, y + BAR - 1.6, bar.text, LETTER - 0.05)


def _beside_a_cut(bar: Bar, y: float, axis: Axis, room: float) -> Iterator[str]:
    """The word of a bar that is cut, in the widest of what is left of it, if that holds it."""
    ends = [bar.start]
    for cut in axis.cuts:
        if bar.start < cut.end and cut.start < bar.end:
            ends += [cut.start, cut.end]
    ends.append(bar.end)
    pieces = [(axis.at(one), axis.at(other)) for one, other in zip(ends[::2], ends[1::2], strict=True)]
    x, end = max(pieces, key=lambda piece: piece[1] - piece[0])
    if room <= end - x - 3:
        yield _lettered(bar, (x + end) / 2, y, room)


def _hours(axis: Axis, clock: WallClock, foot: float) -> Iterator[str]:
    """Full hours, as many as can be told apart, each with its stroke."""
    apart = breadth("00:00", LETTER) + 8
    every = next((hours for hours in HOURS if hours * 60 * axis.scale >= apart), HOURS[-1]) * 60
    free = axis.left - apart / 2
    for minute in clock.every(every, axis.last):
        x = axis.at(minute)
        if not axis.is_shown(minute):
            continue
        yield line(f"M{n(x)} {n(foot)} V{n(foot + 2.5)}", FINE)
        if x - apart / 2 >= free and x + apart / 2 - 6 <= WIDTH:
            yield words(x, foot + 11, clock.said(minute), LETTER)
            free = x + apart / 2 - 6


def _midnights(axis: Axis, clock: WallClock, foot: float) -> Iterator[str]:
    for minute in clock.every(A_DAY, axis.last):
        if axis.is_shown(minute) and minute:
            x = axis.at(minute)
            yield line(f"M{n(x)} 0 V{n(foot)}", FINE, dash="3 2.5")
