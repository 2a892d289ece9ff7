"""What is made of long strands: ring, wreath, knot, pretzel, as they lie on the bench."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, hypot, pi, sin

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import THIN, Art, line, n, path_of, tube


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
            points.append(StrandPoint(50 + far * sin(at), 50 - far * cos(at), cos(turns * at + shift)))
        strands.append(points)
    low = "".join(tube(path_of(((p.x, p.y) for p in points), close=True), 13) for points in strands)
    return Art(100, 100, low + "".join(_on_top(points, 13, 0.25) for points in strands))


def knot() -> Art:
    """One strand tied once: the three-leaved knot, its lowest leaf left open."""
    points = []
    for degrees in range(-163, 164, 2):
        t = degrees * pi / 180
        x, y = sin(t) + 2 * sin(2 * t), cos(t) - 2 * cos(2 * t)
        points.append(StrandPoint(50 + 13.5 * x, 52 - 13.5 * y, -sin(3 * t)))
    low = tube(path_of((p.x, p.y) for p in points), 15)
    return Art(
        100, 100, low + _on_top(points, 15, 0.1) + _end(points[1], points[0], 15) + _end(points[-2], points[-1], 15)
    )


def pretzel() -> Art:
    """One strand, its ends twisted around each other once and laid on its own belly."""
    half = [(50.0, 89.0), (27.0, 84.0), (11.0, 62.0), (14.0, 33.0), (32.0, 17.0), (46.0, 25.0), (54.0, 38.0),
            (50.0, 50.0), (40.0, 62.0), (31.0, 82.0)]  # fmt: skip
    strand = [(x, y) for x, y in reversed(half)] + [(100 - x, y) for x, y in half[1:]]
    points = []
    for at in range(len(strand) - 1):
        for part in range(12):
            x, y = _between(strand, at, part / 12)
            points.append(StrandPoint(x, y, 0.0))
    last = len(points) - 1

    # Of the two places where the arms cross, the left arm lies above at the upper one, the right arm at the lower.
    def height(n_: int) -> float:
        y = points[n_].y
        arm = min(n_, last - n_)
        if arm < 12:
            return 1.0
        if arm < 66 and 24 < y < 58:
            left = n_ < last / 2
            return 1.0 if left == (y < 44) else -1.0
        return -1.0

    points = [point._replace(height=height(at)) for at, point in enumerate(points)]
    low = tube(path_of((p.x, p.y) for p in points), 13)
    return Art(
        100, 100, low + _on_top(points, 13, 0.1) + _end(points[1], points[0], 13) + _end(points[-2], points[-1], 13)
    )


def _between(points: Sequence[tuple[float, float]], at: int, part: float) -> tuple[float, float]:
    """On a smooth curve through points (Catmull and Rom's), this part of the way from one to the next."""
    a, b, c, d = (points[min(max(at + off, 0), len(points) - 1)] for off in (-1, 0, 1, 2))
    t, tt, ttt = part, part * part, part**3
    x, y = (
        0.5 * (2 * b[i] + (c[i] - a[i]) * t + (2 * a[i] - 5 * b[i] + 4 * c[i] - d[i]) * tt
               + (3 * b[i] - a[i] - 3 * c[i] + d[i]) * ttt)
        for i in (0, 1)
    )  # fmt: skip
    return x, y


class StrandPoint(NamedTuple):
    """A point of a strand's middle, and how high it lies: above 0 it is on top."""

    x: float
    y: float
    height: float


def _on_top(points: Sequence[StrandPoint], thick: float, least: float) -> str:
    """The parts of a strand that lie over others, drawn again."""
    parts, run = [], [0, -1]
    for at, point in enumerate((*points, StrandPoint(0, 0, -9))):
        if point.height > least:
            run[1] = at
            continue
        if run[1] - run[0] > 1:
            piece = [(p.x, p.y) for p in points[run[0] : run[1] + 1]]
            more = [(p.x, p.y) for p in points[max(0, run[0] - 1) : run[1] + 2]]
            parts.append(tube(path_of(piece), thick, path_of(more)))
        run = [at + 1, at]
    return "".join(parts)


def _end(before: StrandPoint, last: StrandPoint, thick: float) -> str:
    """The round end of a strand."""
    wide, high = last.x - before.x, last.y - before.y
    far = hypot(wide, high)
    half = thick / 2 - 0.7
    one, other = wide / far * half, high / far * half
    return line(
        f"M{n(last.x - other)} {n(last.y + one)} C{n(last.x - other + one)} {n(last.y + one + other)}"
        f" {n(last.x + other + one)} {n(last.y - one + other)} {n(last.x + other)} {n(last.y - one)}",
        1.4, fill="#fff",
    )  # fmt: skip


def _turn(start: float, end: float, far: float) -> str:
    """Part of a circle about the middle, in degrees from the top, as a path."""
    points = [(50 + far * sin(d * pi / 180), 50 - far * cos(d * pi / 180)) for d in range(int(start), int(end) + 1, 3)]
    return path_of(points, close=end - start == 360)
