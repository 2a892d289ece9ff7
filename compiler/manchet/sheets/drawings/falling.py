"""The way down of an oven whose fire is out: its heat over the hours, and under it for each thing when it may go in."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import LINE, THIN, Art, box, line, n, path_of, words

WIDTH, LEFT, RIGHT = 860.0, 205.0, 842.0
TOP, FOOT = 10.0, 122.0
LANE = 15.0
LETTER = 11.0
"""Size of the words, in units: 9 points."""
MOST_LETTERS = 32
"""Of a name beside its lane; the table has it in full."""


class FallingLane(NamedTuple):
    """One thing: its name, from when to when the floor has its heat, and when its loads are in. Hours."""

    name: str
    opens: float
    closes: float
    loads: tuple[tuple[float, float], ...]


def way_down(
    points: Sequence[tuple[float, float]], lanes: Sequence[FallingLane], degree: str, hour: str, key: str
) -> Art:
    """`points` are hours and degrees in the house's own, from corner to corner; `key` says what black and outline are."""
    last = max([1.0, *(hours for hours, _ in points), *(lane.closes for lane in lanes)])
    step = _apart(max(heat for _, heat in points) - min(heat for _, heat in points), 6, (10, 20, 25, 50, 100))
    low = min(heat for _, heat in points) // step * step
    high = -(-max(heat for _, heat in points) // step) * step

    def x(hours: float) -> float:
        return LEFT + (RIGHT - LEFT) * hours / last

    def y(heat: float) -> float:
        return FOOT - (FOOT - TOP) * (heat - low) / ((high - low) or 1.0)

    parts = []
    foot = FOOT + 8 + LANE * len(lanes)
    for heat in _marks(low, high, step):
        parts.append(line(f"M{n(LEFT)} {n(y(heat))} H{n(RIGHT)}", THIN / 2))
        parts.append(words(LEFT - 6, y(heat) + 4, f"{heat:.0f} {degree}", LETTER, "end"))
    for hours in _marks(0, last, _apart(last, 12, (1, 2, 3, 4, 6, 12))):
        parts.append(line(f"M{n(x(hours))} {n(TOP)} V{n(foot)}", THIN / 2))
        parts.append(words(x(hours), foot + 13, f"{hours:.0f} {hour}", LETTER))
    parts.append(line(path_of([(x(hours), y(heat)) for hours, heat in points]), LINE * 1.4))
    for at, lane in enumerate(lanes):
        top = FOOT + 8 + LANE * at
        parts.append(words(LEFT - 6, top + 10, _short_name(lane.name), LETTER, "end"))
        parts.append(box(x(lane.opens), top + 1.5, max(2.0, x(lane.closes) - x(lane.opens)), 10, THIN, "#fff"))
        for into, out in lane.loads:
            parts.append(box(x(into), top + 1.5, max(2.0, x(out) - x(into) - 1), 10, THIN, "#000"))
    parts.append(words(LEFT, foot + 30, key, LETTER, "start"))
    return Art(WIDTH, foot + 34, "".join(parts))


def _apart(span: float, most: int, steps: tuple[int, ...]) -> float:
    """The first step that gives no more marks than that."""
    return float(next((step for step in steps if span / step <= most), steps[-1]))


def _marks(low: float, high: float, step: float) -> list[float]:
    return [low + step * at for at in range(int((high - low) / step) + 1)]


def _short_name(name: str) -> str:
    return name if len(name) <= MOST_LETTERS else name[: MOST_LETTERS - 1] + "…"
