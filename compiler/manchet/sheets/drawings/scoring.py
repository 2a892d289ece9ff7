"""Cuts in the skin of a loaf: from above, and beside it the blade from the side."""

from __future__ import annotations

from collections.abc import Callable
from math import cos, pi, sin

from manchet.sheets.drawings.pen import LINE, THIN, WIDEST, Art, letters, line, n, oval, placed_at, words

CUT = 3.0
LONG_LOAF = line("M5 34 C5 18 16 12 50 12 C84 12 95 18 95 34 C95 50 84 56 50 56 C16 56 5 50 5 34 Z", fill="#fff")
ROUND_LOAF = oval(50, 36, 32, 32, fill="#fff")

SHALLOW, STEEP = 30, 90
"""Degrees between blade and crust: shallow lifts an ear, upright opens evenly (common practice)."""


def one_long() -> str:
    return LONG_LOAF + line("M16 38 C34 28 62 26 84 31", CUT)


def two_overlapping() -> str:
    return LONG_LOAF + line("M12 35 C26 26 44 24 62 29", CUT) + line("M42 42 C56 36 74 33 88 33", CUT)


def cross() -> str:
    return ROUND_LOAF + line("M50 12 V60", CUT) + line("M26 36 H74", CUT)


def square() -> str:
    cuts = ("M37 13 V59", "M63 13 V59", "M27 23 H73", "M27 49 H73")
    return ROUND_LOAF + "".join(line(cut, CUT) for cut in cuts)


def leaf() -> str:
    stalk = line("M50 10 V62", CUT)
    veins = [f"M50 {n(y)} C{n(50 + s * 9)} {n(y - 3)} {n(50 + s * 16)} {n(y - 8)} {n(50 + s * far)} {n(y - 13)}"
             for y, far in ((30, 17), (42, 23), (54, 20)) for s in (-1, 1)]  # fmt: skip
    return ROUND_LOAF + stalk + "".join(line(vein, 2.4) for vein in veins)


def slanted_row() -> str:
    loaf = line("M3 34 C12 24 26 22 50 22 C74 22 88 24 97 34 C88 44 74 46 50 46 C26 46 12 44 3 34 Z", fill="#fff")
    cuts = [f"M{n(x)} 38 C{n(x + 8)} 33 {n(x + 16)} 30 {n(x + 24)} 29" for x in (13, 29, 45, 61)]
    return loaf + "".join(line(cut, 2.6) for cut in cuts)


CUTS: dict[str, tuple[Callable[[], str], int]] = {
    "one long": (one_long, SHALLOW),
    "two overlapping": (two_overlapping, SHALLOW),
    "cross": (cross, STEEP),
    "square": (square, STEEP),
    "leaf": (leaf, STEEP),
    "slanted row": (slanted_row, SHALLOW),
}
"""Each by its name, with the angle at which the blade is usually held."""


def score(name: str, depth: str, millimetres: float | None, degrees: int | None = None, angle: str = "") -> Art:
    """The cut called `name`; `depth` as it is to be printed ("6 mm", "" where the file says none), `millimetres` of it.

    `degrees` overrules how steep the blade is held; `angle` is printed beside it ("30°", "" where the file gives none).
    """
    draw, usual = CUTS[name]
    loaf = placed_at(draw(), 0, 9, SMALLER)
    blade = _blade(usual if degrees is None else degrees, angle, depth, millimetres)
    return Art(PAPER, 74 if depth else 62, loaf + blade, 6, UNIT)


PAPER = 132.0
UNIT = WIDEST / PAPER
SIZE = letters(UNIT)
SMALLER = 0.7
"""Of the loaf, so that both views stand side by side."""
MIDDLE, CRUST = 100.0, 42.0
"""Where the blade meets the skin of the loaf, in the view from the side."""


def _blade(degrees: int, said: str, depth: str, millimetres: float | None) -> str:
    """The crust from the side, the cut in it, the blade that made it at its angle, and how deep it goes."""
    crust = line(f"M74 {n(CRUST + 6)} C88 {n(CRUST - 2)} 112 {n(CRUST - 2)} 126 {n(CRUST + 7)}", LINE)
    x, y = MIDDLE, CRUST
    angle = degrees * pi / 180
    deep = min(max((millimetres or 6.0) * 1.6, 7.0), 16.0)
    long = min(deep / sin(angle), 16.0) if angle else 16.0
    bottom_x, bottom_y = x + long * cos(angle), y + max(long * sin(angle), 3.0)
    cut = line(f"M{n(x)} {n(y)} L{n(bottom_x)} {n(bottom_y)}", CUT)
    back = 26
    back_x, back_y = x - back * cos(angle), y - back * sin(angle)
    wide_x, wide_y = 5 * sin(angle), 5 * cos(angle)
    blade = line(
        f"M{n(x)} {n(y)} L{n(back_x)} {n(back_y)} L{n(back_x + wide_x)} {n(back_y - wide_y)}"
        f" L{n(x + wide_x * 0.8 - 3 * cos(angle))} {n(y - wide_y * 0.8 - 3 * sin(angle))} Z",
        1.2, fill="#fff",
    )  # fmt: skip
    return crust + cut + blade + _angle(angle, said) + _depth(bottom_x, y, bottom_y, depth)


def _angle(angle: float, said: str) -> str:
    """The arc from the crust to the blade, and its figure on the far side of the blade, where neither loaf lies."""
    if not said:
        return ""
    x, y = MIDDLE, CRUST
    far_x, far_y = x - 17 * cos(angle) + 9 * sin(angle), y - 17 * sin(angle) - 9 * cos(angle)
    arc = line(f"M{n(x - 24)} {n(y + 0.8)} A24 24 0 0 1 {n(x - 24 * cos(angle))} {n(y - 24 * sin(angle))}", THIN)
    return arc + words(far_x + 1, far_y, said, SIZE, "start")


def _depth(x: float, top: float, foot: float, depth: str) -> str:
    """The depth between two hairs, its figure under them."""
    if not depth:
        return ""
    right = max(x + 8, 111.0)
    hairs = line(f"M{n(x + 3)} {n(foot)} H{n(right + 3)} M{n(right - 3)} {n(top)} H{n(right + 3)}", THIN)
    figure = words(PAPER - 1, 72, depth, SIZE, "end")
    return hairs + line(f"M{n(right)} {n(top)} V{n(foot)}", THIN) + figure
