"""What a piece of dough is shaped into, as it lies on the bench."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import cos, hypot, pi, sin
from typing import NamedTuple

from manchet.sheets.drawings.pen import THIN, Art, arrow, line, n, oval, path_of, tube

BENCH = line("M4 84.5 H96", THIN)


def round_() -> Art:
    """A ball seen from the side, with the hands' way under it."""
    ball = line("M50 22 C76 22 88 42 88 62 C88 76 80 84 66 84 H34 C20 84 12 76 12 62 C12 42 24 22 50 22 Z", fill="#fff")
    skin = line("M28 46 C33 36 41 31 50 31", THIN) + line("M72 46 C70 42 68 39 65 37", THIN)
    tucks = arrow(6, 44, 14, 80, -10) + arrow(94, 44, 86, 80, 10)
    return Art(100, 92, BENCH + ball + skin + tucks)


def oval_() -> Art:
    """From above: thick in the middle, the ends rounded; the seam is underneath."""
    body = line("M6 44 C6 30 26 16 50 16 C74 16 94 30 94 44 C94 58 74 72 50 72 C26 72 6 58 6 44 Z", fill="#fff")
    return Art(100, 88, body + line("M22 44 H78", THIN, dash="3 3"))


def long() -> Art:
    """From above: of one thickness, the ends blunt; the seam is underneath."""
    body = line(
        "M12 44 C12 28 22 26 32 26 H68 C78 26 88 28 88 44 C88 60 78 62 68 62 H32 C22 62 12 60 12 44 Z", fill="#fff"
    )
    ways = arrow(46, 78, 12, 78) + arrow(54, 78, 88, 78)
    return Art(100, 88, body + line("M24 44 H76", THIN, dash="3 3") + ways)


def stick() -> Art:
    """Long and thin, the ends pointed."""
    body = line("M4 40 C14 31 26 30 50 30 C74 30 86 31 96 40 C86 49 74 50 50 50 C26 50 14 49 4 40 Z", fill="#fff")
    ways = arrow(46, 66, 6, 66) + arrow(54, 66, 94, 66)
    return Art(100, 80, body + line("M20 40 H80", THIN, dash="3 3") + ways)


def flat() -> Art:
    """A disc, pressed from the middle outwards."""
    disc = line("M8 46 V56 C8 70 27 80 50 80 C73 80 92 70 92 56 V46", fill="#fff") + oval(50, 46, 42, 24, fill="#fff")
    ways = arrow(42, 46, 18, 46) + arrow(58, 46, 82, 46) + arrow(50, 41, 50, 27) + arrow(50, 51, 50, 65)
    return Art(100, 88, disc + ways)


def ring() -> Art:
    """A strand closed over its own end."""
    closed = tube(_turn(0, 360, 32), 22)
    end = line("M43 70.5 C47 74 47 88 43 92", 1.4) + line("M56 71 C60 75 60 88 56 91.4", THIN, dash="2.5 2.5")
    return Art(100, 100, closed + end)


def wreath() -> Art:
    """Two strands twisted, closed to a ring."""
    turns, strands = 9, []
    for shift in (0.0, pi):
        points = []
        for degrees in range(0, 361, 2):
            at = degrees * pi / 180
            far = 33 + 7 * sin(turns * at + shift)
            points.append(Point(50 + far * sin(at), 50 - far * cos(at), cos(turns * at + shift)))
        strands.append(points)
    low = "".join(tube(path_of(((p.x, p.y) for p in points), close=True), 13) for points in strands)
    return Art(100, 100, low + "".join(_on_top(points, 13, 0.25) for points in strands))


def knot() -> Art:
    """One strand tied once: the three-leaved knot, its lowest leaf left open."""
    points = []
    for degrees in range(-163, 164, 2):
        t = degrees * pi / 180
        x, y = sin(t) + 2 * sin(2 * t), cos(t) - 2 * cos(2 * t)
        points.append(Point(50 + 13.5 * x, 52 - 13.5 * y, -sin(3 * t)))
    low = tube(path_of((p.x, p.y) for p in points), 15)
    return Art(100, 100, low + _on_top(points, 15, 0.1) + _end(points[1], points[0]) + _end(points[-2], points[-1]))


class Point(NamedTuple):
    """A point of a strand's middle, and how high it lies: above 0 it is on top."""

    x: float
    y: float
    height: float


def _on_top(points: Sequence[Point], thick: float, least: float) -> str:
    """The parts of a strand that lie over others, drawn again."""
    parts, run = [], [0, -1]
    for at, point in enumerate((*points, Point(0, 0, -9))):
        if point.height > least:
            run[1] = at
            continue
        if run[1] - run[0] > 1:
            piece = [(p.x, p.y) for p in points[run[0] : run[1] + 1]]
            more = [(p.x, p.y) for p in points[max(0, run[0] - 1) : run[1] + 2]]
            parts.append(tube(path_of(piece), thick, path_of(more)))
        run = [at + 1, at]
    return "".join(parts)


def _end(before: Point, last: Point) -> str:
    """The round end of a strand of 15."""
    wide, high = last.x - before.x, last.y - before.y
    far = hypot(wide, high)
    one, other = wide / far * 6.8, high / far * 6.8
    return line(
        f"M{n(last.x - other)} {n(last.y + one)} C{n(last.x - other + one)} {n(last.y + one + other)}"
        f" {n(last.x + other + one)} {n(last.y - one + other)} {n(last.x + other)} {n(last.y - one)}",
        1.4, fill="#fff",
    )  # fmt: skip


def tin_roll() -> Art:
    """The sheet rolled up towards the baker, seam under, as wide as the tin."""
    body = line("M18 30 H74 C86 30 90 40 90 50 C90 60 86 70 74 70 H18", fill="#fff")
    end = oval(18, 50, 11, 20, fill="#fff")
    turns = line(
        "M18 62 C12 62 11 54 11 50 C11 42 14 36 18.5 36 C23 36 25.5 43 25.5 50 C25.5 57 22 60 19 57.5 C16 55 15.5 46 18.5 44",
        THIN,
    )
    seam = line("M22 73 H84", THIN, dash="3 3")
    return Art(
        100,
        88,
        body + end + turns + seam + arrow(52, 12, 52, 25, 0) + arrow(70, 12, 70, 25, 0) + arrow(34, 12, 34, 25, 0),
    )


def _turn(start: float, end: float, far: float) -> str:
    """Part of a circle about the middle, in degrees from the top, as a path."""
    points = [(50 + far * sin(d * pi / 180), 50 - far * cos(d * pi / 180)) for d in range(int(start), int(end) + 1, 3)]
    return path_of(points, close=end - start == 360)


SHAPES: dict[str, Callable[[], Art]] = {
    "round": round_,
    "oval": oval_,
    "long": long,
    "stick": stick,
    "flat": flat,
    "ring": ring,
    "knot": knot,
    "tin roll": tin_roll,
    "wreath": wreath,
}
