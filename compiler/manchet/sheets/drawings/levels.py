"""A tin or a basket cut through: how high the dough stands in it before and after, and where its seam is."""

from __future__ import annotations

from math import sqrt

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import LINE, THIN, Art, arrow, breadth, line, n, words

MIDDLE, RIGHT = 21.0, 47.0
"""Of the vessel from side to side; where the words beside it begin."""
WIDEST, DEEPEST = 32.0, 32.0
TOP, ROW = 4.0, 9.0
"""Where the paper begins; how high a line of words is."""


class VesselCut(NamedTuple):
    """Its inside, all in one measure: millimetres where they are known. `bellied`: as a basket, not of straight sides."""

    rim: float
    floor: float
    depth: float
    bellied: bool = False


TIN = VesselCut(100, 76, 80)
BASKET = VesselCut(100, 0, 74, bellied=True)
"""Drawn where nobody has measured."""


class Captions(NamedTuple):
    """The words in the drawing, those beside a level in lines; () or "" where there is nothing to say."""

    before: tuple[str, ...] = ()
    after: tuple[str, ...] = ()
    gap: bool = False
    """An arrow from the rim to the dough."""
    seam: str = ""


def cut(vessel: VesselCut, before: float | None, after: float | None, seam: str, said: Captions) -> Art:
    """`before` (dashed) and `after` as shares of the depth, over 1 above the rim; `seam`: "up", "down" or ""."""
    scale = min(WIDEST / max(vessel.rim, vessel.floor), DEEPEST / vessel.depth)
    deep = vessel.depth * scale
    room = max(0.0, 29 - deep) / 2  # for the words beside a flat one
    rim = 9.0 + room + max(0.0, min((after or 0.0) - 1, 0.6)) * deep
    heights = [None if share is None else rim + deep * (1 - min(share, 1.6)) for share in (before, after)]
    low, high = heights
    parts = [_walls(vessel, scale, rim)]
    if low is not None:
        parts.append(_surface(vessel, scale, rim, low, THIN, "3 3"))
    if high is not None:
        parts.append(_surface(vessel, scale, rim, high, LINE))
    if said.gap and high is not None:
        level = line(f"M{n(MIDDLE - 14)} {n(rim)} H{n(MIDDLE + 14)}", THIN, dash="1.5 2.5")
        parts.append(level + arrow(MIDDLE, rim, MIDDLE, high - 1))
    beside, down = _beside(vessel, scale, rim, low, high, said)
    parts.append(beside)
    top = low if low is not None else high
    if seam and top is not None:
        parts.append(_seam(seam, top, rim + deep) + words(MIDDLE - 20, rim + deep + 10, said.seam, anchor="start"))
    wide = max((RIGHT + breadth(text) for text in (*said.before, *said.after)), default=0.0)
    return Art(max(60.0, wide), max(down, rim + deep + (12.0 if seam else 3.0)), "".join(parts), TOP)


def _half(vessel: VesselCut, scale: float, rim: float, y: float) -> float:
    """From the middle to the wall at this height."""
    deep = vessel.depth * scale
    down = min(max((y - rim) / deep, 0.0), 1.0)
    if vessel.bellied:
        return vessel.rim * scale / 2 * sqrt(1 - down * down)
    return scale / 2 * (vessel.rim + (vessel.floor - vessel.rim) * down)


def _walls(vessel: VesselCut, scale: float, rim: float) -> str:
    top, foot, deep = vessel.rim * scale / 2, vessel.floor * scale / 2, vessel.depth * scale
    edge = line(f"M{n(MIDDLE - top - 4)} {n(rim)} H{n(MIDDLE - top)} M{n(MIDDLE + top)} {n(rim)} h4")
    if vessel.bellied:
        return edge + line(f"M{n(MIDDLE - top)} {n(rim)} A{n(top)} {n(deep)} 0 0 0 {n(MIDDLE + top)} {n(rim)}")
    return edge + line(
        f"M{n(MIDDLE - top)} {n(rim)} L{n(MIDDLE - foot)} {n(rim + deep)} h{n(2 * foot)} L{n(MIDDLE + top)} {n(rim)}"
    )


def _surface(vessel: VesselCut, scale: float, rim: float, y: float, width: float, dash: str = "") -> str:
    """The skin of the dough, a little domed about its level."""
    half = _half(vessel, scale, rim, y + 2)
    bend = half * 0.5
    return line(
        f"M{n(MIDDLE - half)} {n(y + 2)} C{n(MIDDLE - bend)} {n(y - 2)} {n(MIDDLE + bend)} {n(y - 2)} {n(MIDDLE + half)} {n(y + 2)}",
        width, dash=dash,
    )  # fmt: skip


def _beside(
    vessel: VesselCut, scale: float, rim: float, low: float | None, high: float | None, said: Captions
) -> tuple[str, float]:
    """The words at their levels, moved apart where those lie close; and how far down they reach."""
    there = [(y, lines) for y, lines in ((high, said.after), (low, said.before)) if y is not None and lines]
    parts, down = [], TOP
    for y, lines in there:
        tall = ROW * len(lines)
        start = max(y + 2 - tall / 2, down)
        half = _half(vessel, scale, rim, y + 2)
        parts.append(line(f"M{n(MIDDLE + half + 2)} {n(y + 2)} L{n(RIGHT - 2)} {n(start + tall / 2)}", THIN))
        parts += [words(RIGHT, start + 7.5 + ROW * row, text, 9, "start") for row, text in enumerate(lines)]
        down = start + tall + 1
    return "".join(parts), down


def _seam(seam: str, top: float, floor: float) -> str:
    """A crease in the skin, above or below."""
    y, way = (top - 0.5, 1) if seam == "up" else (floor - 1, -1)
    return line(
        f"M{n(MIDDLE - 5)} {n(y)} Q{n(MIDDLE)} {n(y + way)} {n(MIDDLE)} {n(y + way * 7)} Q{n(MIDDLE)} {n(y + way)} {n(MIDDLE + 5)} {n(y)}"
    )
