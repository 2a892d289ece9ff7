"""What a piece of dough is shaped into, as it lies on the bench."""

from __future__ import annotations

from collections.abc import Callable
from math import cos, pi, sin

from manchet.sheets.drawings import strands
from manchet.sheets.drawings.pen import LINE, THIN, Art, arrow, line, oval

BENCH = line("M4 84.5 H96", THIN)


def round_() -> Art:
    """A ball seen from the side, with the hands' way under it."""
    ball = line("M50 22 C76 22 88 42 88 62 C88 76 80 84 66 84 H34 C20 84 12 76 12 62 C12 42 24 22 50 22 Z", fill="#fff")
    skin = line("M28 46 C33 36 41 31 50 31", THIN) + line("M72 46 C70 42 68 39 65 37", THIN)
    tucks = arrow(6, 44, 14, 80, -10) + arrow(94, 44, 86, 80, 10)
    return Art(100, 88, BENCH + ball + skin + tucks, 18)


def pre_shape() -> Art:
    """From above: the edges drawn to the middle all around; then it is turned over."""
    rim = line("M50 12 C76 10 92 28 90 52 C90 76 72 92 48 90 C24 90 8 74 10 48 C10 26 28 12 50 12 Z", fill="#fff")
    ways = []
    for degrees in range(0, 360, 60):
        side, up = sin(degrees * pi / 180), -cos(degrees * pi / 180)
        ways.append(arrow(50 + 32 * side, 51 + 32 * up, 50 + 9 * side, 51 + 9 * up))
    return Art(100, 94, rim + "".join(ways) + oval(50, 51, 3, 3, THIN), 8)


def oval_() -> Art:
    """From above: thick in the middle, the ends rounded; the seam is underneath."""
    body = line("M6 44 C6 30 26 16 50 16 C74 16 94 30 94 44 C94 58 74 72 50 72 C26 72 6 58 6 44 Z", fill="#fff")
    return Art(100, 76, body + line("M22 44 H78", THIN, dash="3 3"), 12)


def long() -> Art:
    """From above: both hands roll it outwards from the middle, the ends blunt; the seam is underneath."""
    body = line(
        "M12 44 C12 28 22 26 32 26 H68 C78 26 88 28 88 44 C88 60 78 62 68 62 H32 C22 62 12 60 12 44 Z", fill="#fff"
    )
    hands = line("M24 20 C28 12 40 12 44 20", LINE) + line("M56 20 C60 12 72 12 76 20", LINE)
    ways = arrow(46, 74, 12, 74) + arrow(54, 74, 88, 74)
    return Art(100, 80, hands + body + line("M24 44 H76", THIN, dash="3 3") + ways, 12)


def stick() -> Art:
    """Long and thin, the ends pointed."""
    body = line("M4 40 C14 31 26 30 50 30 C74 30 86 31 96 40 C86 49 74 50 50 50 C26 50 14 49 4 40 Z", fill="#fff")
    ways = arrow(46, 66, 6, 66) + arrow(54, 66, 94, 66)
    return Art(100, 72, body + line("M20 40 H80", THIN, dash="3 3") + ways, 26)


def flat() -> Art:
    """A disc, pressed from the middle outwards."""
    disc = line("M8 46 V56 C8 70 27 80 50 80 C73 80 92 70 92 56 V46", fill="#fff") + oval(50, 46, 42, 24, fill="#fff")
    ways = arrow(42, 46, 18, 46) + arrow(58, 46, 82, 46) + arrow(50, 41, 50, 27) + arrow(50, 51, 50, 65)
    return Art(100, 84, disc + ways, 18)


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
        78,
        body + end + turns + seam + arrow(52, 12, 52, 25, 0) + arrow(70, 12, 70, 25, 0) + arrow(34, 12, 34, 25, 0),
        8,
    )


SHAPES: dict[str, Callable[[], Art]] = {
    "round": round_,
    "pre-shape": pre_shape,
    "oval": oval_,
    "long": long,
    "stick": stick,
    "flat": flat,
    "ring": strands.ring,
    "knot": strands.knot,
    "pretzel": strands.pretzel,
    "tin roll": tin_roll,
    "wreath": strands.wreath,
}

SHAPE_WORDS = {
    "round": "round", "ball": "round", "boule": "round",
    "oval": "oval", "batard": "oval", "bâtard": "oval",
    "long": "long",
    "stick": "stick", "baguette": "stick", "baton": "stick",
    "flat": "flat", "disc": "flat", "disk": "flat",
    "ring": "ring", "bagel": "ring",
    "knot": "knot",
    "pretzel": "pretzel",
    "tin roll": "tin roll", "tin loaf": "tin roll", "pan loaf": "tin roll",
    "wreath": "wreath",
}  # fmt: skip
"""What may stand after `shape` or `shape as`, and its drawing."""
