"""Folds of a sheet of dough: in three as a letter, in four as a book; from above, then shut and seen from its end."""

from __future__ import annotations

from manchet.sheets.drawings.pen import THIN, Art, arrow, box, line, words

SHEET = 3.0
"""How thick the dough is drawn from its end."""


def letter(open_edge: str) -> Art:
    """One third over, the other third over that."""
    sheet = box(4, 18, 92, 30) + line("M34.7 18 V48 M65.3 18 V48", THIN, dash="3 3")
    numbers = words(19.5, 37, "1") + words(80.5, 37, "2")
    over = arrow(14, 15, 60, 15, 9) + arrow(86, 51, 40, 51, 9)
    shut = line("M76 92 H28 C21 92 21 84 28 84 H72 C79 84 79 76 72 76 H24", SHEET)
    mark = arrow(4, 76, 19, 76) + words(4, 71, open_edge, 8, "start")
    return Art(100, 98, sheet + numbers + over + shut + mark)


def book(open_edge: str) -> Art:
    """Both ends to the middle, then shut like a book."""
    sheet = box(4, 18, 92, 30) + line("M27 18 V48 M73 18 V48", THIN, dash="3 3") + line("M50 18 V48", THIN)
    numbers = words(15.5, 37, "1") + words(84.5, 37, "2")
    over = arrow(8, 15, 47, 15, 8) + arrow(92, 15, 53, 15, -8)
    shut = line("M30 73 H66 C73 73 73 66 66 66 H28 C15 66 15 90 28 90 H66 C73 90 73 83 66 83 H30", SHEET)
    mark = arrow(95, 78, 76, 78) + words(96, 62, open_edge, 8, "end")
    return Art(100, 98, sheet + numbers + over + shut + mark)


FOLDS = {"fold in three": letter, "fold in four": book}
