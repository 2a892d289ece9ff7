"""The way down of an oven whose fire is out: its heat over the hours, with a number where each load goes in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import LINE, THIN, Art, box, breadth, line, n, oval, path_of, words
from manchet.sheets.drawings.wall_clock import WallClock

WIDTH, LEFT, RIGHT = 596.0, 40.0, 584.0
"""As wide as the room on A4."""
TOP, FOOT = 16.0, 112.0
"""40 mm high with its clock: less is not read."""
LETTER = 9.0
HOURS = (1, 2, 3, 4, 6, 12)


class LoadMark(NamedTuple):
    """Where a load goes in: hours, the floor in the house's degrees, and its number."""

    hours: float
    heat: float
    number: str


class HeatWindow(NamedTuple):
    """While a load is in, and between which heats it may go in: hours, and degrees of the house."""

    begins: float
    ends: float
    low: float
    high: float


def way_down(
    points: Sequence[tuple[float, float]],
    loads: Sequence[LoadMark],
    degree: str,
    clock: WallClock | None,
    windows: Sequence[HeatWindow] = (),
) -> Art:
    """`points` are hours and degrees in the house's own, from corner to corner; `clock` what the wall shows
    from the beginning of the hours on, None where they count from nought."""
    last = max([1.0, *(hours for hours, _ in points)])
    step = _apart(max(heat for _, heat in points) - min(heat for _, heat in points), 5, (10, 20, 25, 50, 100))
    low = min(heat for _, heat in points) // step * step
    high = -(-max(heat for _, heat in points) // step) * step

    def at(hours: float, heat: float) -> tuple[float, float]:
        return LEFT + (RIGHT - LEFT) * hours / last, FOOT - (FOOT - TOP) * (heat - low) / ((high - low) or 1.0)

    parts = []
    for heat in _marks(low, high, step):
        y = at(0, heat)[1]
        parts.append(line(f"M{n(LEFT)} {n(y)} H{n(RIGHT)}", THIN / 2))
        parts.append(words(LEFT - 4, y + 3, f"{heat:.0f} {degree}", LETTER, "end"))
    parts += _clock(last, clock)
    for window in windows:
        (x, top), (end, foot) = at(window.begins, min(window.high, high)), at(window.ends, max(window.low, low))
        parts.append(box(x, top, end - x, foot - top, THIN))
    parts.append(line(path_of([at(hours, heat) for hours, heat in points]), LINE))
    parts += _numbers([(*at(mark.hours, mark.heat), mark.number) for mark in loads], bool(windows))
    return Art(WIDTH, FOOT + 15, "".join(parts))


def _clock(last: float, clock: WallClock | None) -> Iterator[str]:
    """Full hours, as many as can be told apart."""
    room = breadth("+00:00", LETTER) + 10
    every = next((hours for hours in HOURS if (RIGHT - LEFT) * hours / last >= room), HOURS[-1])
    full = list((WallClock(0) if clock is None else clock).every(60, int(last * 60)))
    for minute in full[::every]:
        x = LEFT + (RIGHT - LEFT) * minute / 60 / last
        yield line(f"M{n(x)} {n(FOOT)} V{n(FOOT + 3)}", THIN)
        yield words(x, FOOT + 12, f"+{minute // 60}:{minute % 60:02}" if clock is None else clock.said(minute), LETTER)


def _numbers(spots: Sequence[tuple[float, float, str]], on_white: bool) -> Iterator[str]:
    """A dot for each load; its number above it, or below where another stands in the way."""
    above = below = -100.0
    for x, y, number in spots:
        yield oval(x, y, 2.2, 2.2, THIN, "#000")
        half = breadth(number, LETTER) / 2 + 1
        if x - half >= above:
            yield from _number(x, y - 5, number, on_white)
            above = x + half
        elif x - half >= below:
            yield from _number(x, y + 12, number, on_white)
            below = x + half


def _number(x: float, y: float, number: str, on_white: bool) -> Iterator[str]:
    """On white where boxes are drawn, so that no line strikes it."""
    if on_white:
        wide = breadth(number, LETTER) + 2
        yield f'<rect x="{n(x - wide / 2)}" y="{n(y - LETTER + 1.5)}" width="{n(wide)}" height="{n(LETTER - 0.5)}" fill="#fff" stroke="none"/>'
    yield words(x, y, number, LETTER)


def _apart(span: float, most: int, steps: tuple[int, ...]) -> float:
    """The first step that gives no more marks than that."""
    return float(next((step for step in steps if span / step <= most), steps[-1]))


def _marks(low: float, high: float, step: float) -> list[float]:
    return [low + step * at for at in range(int((high - low) / step) + 1)]
