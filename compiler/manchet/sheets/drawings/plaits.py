"""Plaits: the strands side by side, and each move as it is said at the bench, "3 over 2".

The numbers are places, counted from the left anew after every move; a strand that goes over lies on all it passes. The
orders are common practice in the trade.
"""

from __future__ import annotations

from collections.abc import Sequence

from manchet.sheets.drawings.pen import Art, breadth, n, tube, words

MOVES: dict[int, tuple[tuple[tuple[int, int], ...], tuple[tuple[int, int], ...]]] = {
    3: ((), ((3, 2), (1, 2))),
    4: ((), ((4, 2), (1, 3), (2, 3))),
    6: (((6, 1),), ((2, 6), (1, 3), (5, 1), (6, 4))),
}
"""For so many strands: what is done once, then what is done over and over."""

_SHOWN = {3: 4, 4: 4, 6: 5}
_ROW = 9.6


def plait(strands: int, over: str) -> Art:
    """A plait of 3, 4 or 6 strands; `over` is the phrase "{} over {}"."""
    first, again = MOVES[strands]
    moves = [*first, *(again * 6)][: _SHOWN[strands]]
    gap = {3: 14.0, 4: 12.0, 6: 9.6}[strands]
    thick = gap * 0.72
    left = thick / 2 + 2
    right = left + gap * (strands - 1) + thick / 2 + 5
    places = [left + gap * place for place in range(strands)]
    top = 12.0
    parts = [words(x, 8, str(number)) for number, x in enumerate(places, 1)]
    parts += [tube(f"M{n(x)} {n(top)} V{n(top + 3.3)}", thick, f"M{n(x)} {n(top - 1)} V{n(top + 4)}") for x in places]
    y = top + 3
    for row, (start, end) in enumerate(moves):
        parts += _row(places, start - 1, end - 1, y, thick)
        said = over.split("{}")
        parts.append(words(right, y + _ROW / 2 + 3.5, f"{said[0]}{start}{said[1]}{end}{said[2]}", 9, "start"))
        if row == len(first) + len(again) - 1:
            parts.append(
                f'<path d="M{n(right)} {n(y + _ROW + 0.6)} h{n(breadth(over, 9))}" fill="none" stroke="#000" stroke-width="0.9"/>'
            )
        y += _ROW
    parts += [tube(f"M{n(x)} {n(y - 0.3)} V{n(y + 3)}", thick, f"M{n(x)} {n(y - 0.9)} V{n(y + 4)}") for x in places]
    return Art(right + 36, y + 3.5, "".join(parts))


def _row(places: Sequence[float], start: int, end: int, y: float, thick: float) -> list[str]:
    """One move: what is passed shifts to the side it came from, the one that goes over is drawn last."""
    step = 1 if end > start else -1
    passed = range(start + step, end + step, step)
    still = [place for place in range(len(places)) if place != start and place not in passed]
    ways = [(place, place) for place in still] + [(place, place - step) for place in passed] + [(start, end)]
    return [tube(_way(places[a], places[b], y), thick, _way(places[a], places[b], y, 0.9)) for a, b in ways]


def _way(x: float, to: float, y: float, more: float = 0.3) -> str:
    foot = y + _ROW
    bend = _ROW * 0.42
    curve = f"C{n(x)} {n(y + bend)} {n(to)} {n(foot - bend)} {n(to)} {n(foot)}"
    return f"M{n(x)} {n(y - more)} V{n(y)} {curve} V{n(foot + more)}"
