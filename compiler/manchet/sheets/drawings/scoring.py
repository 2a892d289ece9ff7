"""Cuts in the skin of a loaf: from above, and beside it the blade from the side."""

from __future__ import annotations

from collections.abc import Callable
from math import cos, pi, sin

from manchet.sheets.drawings.pen import LINE, THIN, Art, line, n, oval, words

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
"""Each by its name, with the blade's angle."""


def score(name: str, depth: str, degrees: int | None = None) -> Art:
    """The cut called `name`; `depth` as it is to be printed ("6 mm deep", "" where the file says none).

    `degrees` overrules how steep the blade is held.
    """
    draw, usual = CUTS[name]
    return Art(100, 116, draw() + _blade(usual if degrees is None else degrees, depth))


def _blade(degrees: int, depth: str) -> str:
    """The crust from the side, the cut in it, and the blade that made it."""
    crust = line("M6 98 C26 88 74 88 94 98", LINE)
    x, y = 50.0, 90.6
    angle = degrees * pi / 180
    deep_x, deep_y = x + 11 * cos(angle), y + 11 * sin(angle)
    far_x, far_y = x - 24 * cos(angle), y - 17 * sin(angle)
    cut = line(f"M{n(x)} {n(y)} L{n(deep_x)} {n(deep_y)}", CUT)
    wide_x, wide_y = 3 * sin(angle), 3 * cos(angle)
    blade = line(
        f"M{n(x)} {n(y)} L{n(far_x)} {n(far_y)} L{n(far_x + wide_x)} {n(far_y - wide_y)} L{n(x + wide_x)} {n(y - wide_y)} Z",
        THIN, fill="#fff",
    )  # fmt: skip
    arc = ""
    if degrees < 80:
        arc = line(f"M30 {n(y + 1.2)} A20 20 0 0 1 {n(x - 20 * cos(angle))} {n(y - 20 * sin(angle) * 0.74)}", THIN)
    label = words(
        22 if degrees < 80 else 62, 84 if degrees < 80 else 82, f"{degrees}°", 9, "end" if degrees < 80 else "start"
    )
    return crust + cut + blade + arc + label + words(50, 113, depth, 9)
