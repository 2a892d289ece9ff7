"""The chart of a planned day: a lane for each bread with its stages thin below, the floor's way down with its loads, and who is there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import LINE, MILLIMETRES, THIN, Art, box, breadth, line, n, path_of, words
from manchet.sheets.drawings.wall_clock import WallClock

LETTER = 9.0
"""8 points on paper."""
HOUR_LETTER = 11.2
"""10 points."""
MILLIMETRE = 1 / MILLIMETRES
BAR, STAGE, APART = 4 * MILLIMETRE, 3 * MILLIMETRE, 0.5 * MILLIMETRE
"""The bar of a dough, of a stage below it, and what lies between them."""
EDGE = 0.8 * MILLIMETRE
"""Above and below the bars of a lane."""
CURVE = 18 * MILLIMETRE
LOADS = 8.2 * MILLIMETRE
PEOPLE = 4.7 * MILLIMETRE
HEAD = 6 * MILLIMETRE
KEY = 5 * MILLIMETRE
FINE = 0.7


class ChartBar(NamedTuple):
    """A stretch of a lane in minutes of the chart: "work" (black), "alone" (outline), "cold" (hatched) or "oven" (framed)."""

    start: int
    end: int
    ink: str
    text: str = ""
    of: str = ""
    """The stage that it is a bar of."""


class ChartEnd(NamedTuple):
    """When a bread is fit, when it is due, and that clock."""

    out: int
    due: int
    clock: str


class ChartLane(NamedTuple):
    """One bread: its dough, its stages below, and its ends."""

    title: str
    bars: tuple[ChartBar, ...]
    stages: tuple[ChartBar, ...] = ()
    ends: tuple[ChartEnd, ...] = ()


class ChartPoint(NamedTuple):
    """The floor of an oven at a minute, as a share of the height of its curve, and a word for it."""

    minute: int
    high: float
    text: str = ""


class ChartOven(NamedTuple):
    """How an oven is heated and falls, and what is in it when."""

    title: str
    rises: tuple[ChartPoint, ...]
    falls: tuple[ChartPoint, ...]
    marks: tuple[ChartPoint, ...]
    """The floor as loads go in."""
    loads: tuple[ChartBar, ...]


class ChartRow(NamedTuple):
    """A mixer, or somebody: when there, and when at work."""

    title: str
    there: tuple[ChartBar, ...]
    at_work: tuple[ChartBar, ...]


class DayChart(NamedTuple):
    lanes: tuple[ChartLane, ...]
    ovens: tuple[ChartOven, ...]
    rows: tuple[ChartRow, ...]
    last: int
    """Minutes that it shows."""
    key: tuple[tuple[str, str], ...]
    """What each ink means, the last of them "due"."""


def day_chart(chart: DayChart, clock: WallClock, days: Sequence[tuple[int, str]], width: float, high: float) -> Art:
    """`days` are the midnights that it shows, with their names; `width` and `high` the room on paper, in millimetres."""
    return _Chart(chart, clock, days, width * MILLIMETRE, high * MILLIMETRE).art()


class _Chart:
    def __init__(
        self, chart: DayChart, clock: WallClock, days: Sequence[tuple[int, str]], width: float, high: float
    ) -> None:
        self.chart, self.clock, self.days, self.width = chart, clock, days, width
        titles = [
            *(one.title for one in chart.lanes),
            *(one.title for one in chart.ovens),
            *(one.title for one in chart.rows),
        ]
        self.left = min(max(breadth(title, LETTER) for title in titles) + 8, width / 5)
        self.right = width - breadth("00:00", LETTER) - 8
        self.scale = (self.right - self.left) / max(chart.last, 1)
        below = sum(map(_oven_high, chart.ovens)) + PEOPLE * len(chart.rows)
        self.stacked = True  # stages of the same hours below one another, where there is room for that
        self.stacked = HEAD + KEY + below + sum(map(self._high, chart.lanes)) <= high
        self.foot = HEAD + sum(map(self._high, chart.lanes)) + below

    def at(self, minute: float) -> float:
        return self.left + self.scale * min(max(minute, 0), self.chart.last)

    def art(self) -> Art:
        parts = [*self._hours()]
        y = HEAD
        for lane in self.chart.lanes:
            parts += self._lane(lane, y)
            y += self._high(lane)
        for oven in self.chart.ovens:
            parts += self._oven(oven, y)
            y += _oven_high(oven)
        for row in self.chart.rows:
            parts += self._row(row, y)
            y += PEOPLE
        parts += self._key(y + 4)
        return Art(self.width, y + KEY, "".join(parts))

    def _key(self, y: float) -> Iterator[str]:
        x = self.left
        for ink, text in self.chart.key:
            if ink == "due":
                yield f'<path d="{path_of([(x + 10, y + 9), (x + 18, y + 9), (x + 14, y)], close=True)}" fill="#000" stroke="none"/>'
            else:
                yield from _swatch(ink, x, y)
            yield words(x + 24, y + 8, text, LETTER, "start")
            x += breadth(text, LETTER) + 40

    # ---- the clock

    def _hours(self) -> Iterator[str]:
        """Every three hours, or as many as can be told apart; a midnight is a whole line with its day."""
        apart = breadth("00", HOUR_LETTER) * 2
        every = next((hours for hours in (3, 6, 12, 24) if hours * 60 * self.scale >= apart), 24) * 60
        midnights = dict(self.days)
        for minute in self.clock.every(every, self.chart.last):
            if minute in midnights:
                continue
            x = self.at(minute)
            yield line(f"M{n(x)} {n(HEAD - 2)} V{n(self.foot)}", FINE / 2, dash="1.2 3")
            if all(abs(self.at(one) - x) > breadth(name, HOUR_LETTER) / 2 + apart / 3 for one, name in self.days):
                yield words(x, HEAD - 5, self.clock.said(minute)[:2], HOUR_LETTER)
        for minute, name in self.days:
            x = self.at(minute)
            yield line(f"M{n(x)} {n(HEAD - 2)} V{n(self.foot)}", FINE)
            half = breadth(name, HOUR_LETTER) / 2
            yield words(min(max(x, self.left + half), self.right - half), HEAD - 5, name, HOUR_LETTER, bold=True)

    # ---- a bread

    def _stages(self, lane: ChartLane) -> list[list[ChartBar]]:
        """The stages in as many rows as it takes for none to lie on another; in one where there is no room for more."""
        named: dict[str, list[ChartBar]] = {}
        for bar in lane.stages:
            named.setdefault(bar.of, []).append(bar)
        rows: list[list[ChartBar]] = []
        for bars in sorted(named.values(), key=lambda bars: min(bar.start for bar in bars)):
            start = min(bar.start for bar in bars)
            free = (row for row in rows if not self.stacked or max(bar.end for bar in row) <= start)
            row = next(free, None)
            if row is None:
                rows.append(list(bars))
            else:
                row += bars
        return rows

    def _high(self, lane: ChartLane) -> float:
        return EDGE * 2 + BAR + (STAGE + APART) * len(self._stages(lane))

    def _lane(self, lane: ChartLane, y: float) -> Iterator[str]:
        yield line(f"M0 {n(y)} H{n(self.width)}", FINE / 2)
        top = y + EDGE
        yield words(0, top + BAR - 3, lane.title, LETTER, "start", bold=True)
        for end in lane.ends:
            yield from self._end(end, top)
        for bar in _painted(lane.bars):
            yield from self._bar(bar, top, BAR)
        for bar in lane.bars:
            yield from self._said(bar, lane.bars, top, BAR)
        top += BAR + APART
        for row in self._stages(lane):
            for bar in _painted(row):
                yield from self._bar(bar, top, STAGE)
            yield from self._names(row, top)
            top += STAGE + APART

    def _bar(self, bar: ChartBar, y: float, high: float) -> Iterator[str]:
        x, end = self.at(bar.start), self.at(bar.end)
        wide = max(1.4, end - x)
        if bar.ink == "work":
            yield f'<rect x="{n(x)}" y="{n(y)}" width="{n(wide)}" height="{n(high)}" fill="#000" stroke="none"/>'
        elif bar.ink == "oven":
            yield box(x, y - 1.5, wide, high + 3, LINE, "#fff")
        else:
            yield box(x, y, wide, high, FINE, "#fff")
            if bar.ink == "cold":
                yield from _hatched(x, y, wide, high)

    def _said(self, bar: ChartBar, bars: Sequence[ChartBar], y: float, high: float) -> Iterator[str]:
        """What is waited for, in the widest part of its bar that no other bar lies on."""
        if not bar.text:
            return
        inside = sorted(
            (one.start, one.end) for one in bars if one is not bar and one.start < bar.end and one.end > bar.start
        )
        edges = [bar.start, *(minute for pair in inside for minute in pair), bar.end]
        x, end = max(
            ((self.at(one), self.at(other)) for one, other in zip(edges[::2], edges[1::2], strict=True)),
            key=lambda pair: pair[1] - pair[0],
        )
        room = breadth(bar.text, LETTER) + 3
        if room <= end - x:
            say = _label if bar.ink == "cold" else _word
            yield say((x + end) / 2, y + high - (high - LETTER) / 2 - 2.2, bar.text)

    def _names(self, row: Sequence[ChartBar], y: float) -> Iterator[str]:
        """Each stage's name in its longest bar, or behind it where that does not hold it."""
        for name in dict.fromkeys(bar.of for bar in row):
            mine = [bar for bar in row if bar.of == name]
            longest = max(mine, key=lambda bar: bar.end - bar.start)
            x, end, room = self.at(longest.start), self.at(longest.end), breadth(name, LETTER) + 4
            foot = y + STAGE - 1.8
            if room <= end - x and longest.ink != "work":
                yield (_label if longest.ink == "cold" else _word)((x + end) / 2, foot, name)
                continue
            behind = self.at(max(bar.end for bar in mine)) + 3
            others = [self.at(bar.start) for bar in row if bar.of != name and self.at(bar.start) >= behind - 3]
            if behind + room <= min([self.right, *others]):
                yield _label(behind + room / 2 - 2, foot, name)

    def _end(self, end: ChartEnd, top: float) -> Iterator[str]:
        x, y = self.at(end.due), top + BAR / 2
        yield line(f"M{n(self.at(end.out))} {n(y)} H{n(x - 4)}", FINE, dash="1.2 2.4")
        yield f'<path d="{path_of([(x - 4, y + 4.5), (x + 4, y + 4.5), (x, y - 4.5)], close=True)}" fill="#000" stroke="none"/>'
        yield words(x + 6, y + 3, end.clock, LETTER, "start", bold=True)

    # ---- the oven

    def _oven(self, oven: ChartOven, y: float) -> Iterator[str]:
        yield line(f"M0 {n(y)} H{n(self.width)}", FINE / 2)
        yield words(0, y + EDGE + BAR - 3, oven.title, LETTER, "start", bold=True)
        foot = y + EDGE
        if oven.falls:
            high, top = CURVE - LETTER - EDGE - 4, y + LETTER + EDGE + 2

            def spot(point: ChartPoint) -> tuple[float, float]:
                return self.at(point.minute), top + high * (1 - point.high)

            if oven.rises:
                yield line(path_of([spot(point) for point in oven.rises]), THIN, dash="4 3")
            yield line(path_of([spot(point) for point in oven.falls]), LINE)
            free = self.left
            for point in sorted((*oven.rises, *oven.marks), key=lambda one: one.minute):
                x, height = spot(point)
                half = breadth(point.text, LETTER) / 2
                x += -half - 3 if point is oven.rises[0] else half + 1
                if point.text and x - half >= free and x + half <= self.width:
                    yield _label(x, height - (0 if point is oven.rises[0] else 3.5), point.text)
                    free = x + half + 2
            foot = y + CURVE + 2
        for bar in oven.loads:
            yield from self._bar(bar._replace(ink="oven"), foot, BAR)
        yield from self._numbers(oven.loads, foot + BAR + LETTER + 0.5)

    def _numbers(self, loads: Sequence[ChartBar], y: float) -> Iterator[str]:
        """Under each load its number; of those that lie on one another all together."""
        together: list[list[ChartBar]] = []
        for bar in sorted(loads, key=lambda one: one.start):
            if together and bar.start < max(one.end for one in together[-1]):
                together[-1].append(bar)
            else:
                together.append([bar])
        for bars in together:
            x = (self.at(bars[0].start) + self.at(max(bar.end for bar in bars))) / 2
            yield _label(x, y, " + ".join(bar.text for bar in bars))

    # ---- machines and people

    def _row(self, row: ChartRow, y: float) -> Iterator[str]:
        yield words(0, y + BAR - 1, row.title, LETTER, "start", bold=True)
        for bar in row.there:
            yield box(self.at(bar.start), y + 2, self.at(bar.end) - self.at(bar.start), BAR - 2, FINE, "#fff")
        for bar in row.at_work:
            yield from self._bar(bar._replace(ink="work"), y + 2, BAR - 2)


def _oven_high(oven: ChartOven) -> float:
    return (CURVE if oven.falls else EDGE) + LOADS


def _word(x: float, y: float, text: str) -> str:
    return words(x, y, text, LETTER)


def _label(x: float, y: float, text: str) -> str:
    """A word on white, so that no line strikes it."""
    half = breadth(text, LETTER) / 2 + 1
    ground = f'<rect x="{n(x - half)}" y="{n(y - LETTER + 2)}" width="{n(half * 2)}" height="{n(LETTER)}" fill="#fff" stroke="none"/>'
    return ground + words(x, y, text, LETTER)


def _swatch(ink: str, x: float, y: float) -> Iterator[str]:
    """What an ink looks like, in the key."""
    if ink == "work":
        yield f'<rect x="{n(x)}" y="{n(y)}" width="20" height="9" fill="#000" stroke="none"/>'
        return
    yield box(x, y, 20, 9, LINE if ink == "oven" else FINE, "#fff")
    if ink == "cold":
        yield from _hatched(x, y, 20, 9)


def _painted(bars: Sequence[ChartBar]) -> list[ChartBar]:
    """What is left alone first, then what is done on top of it, the oven last."""
    order = {"alone": 0, "cold": 0, "work": 1, "oven": 2}
    return sorted(bars, key=lambda bar: order[bar.ink])


def _hatched(x: float, y: float, wide: float, high: float) -> Iterator[str]:
    """Slanted strokes within a bar."""
    strokes = []
    at = -high
    while at < wide:
        x1, y1 = max(at, 0.0), high - max(-at, 0.0)
        x2, y2 = min(at + high, wide), max(high - (wide - at), 0.0)
        if x2 > x1:
            strokes.append(f"M{n(x + x1)} {n(y + y1)} L{n(x + x2)} {n(y + y2)}")
        at += 4
    yield line(" ".join(strokes), FINE / 2)
