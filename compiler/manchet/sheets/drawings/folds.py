"""Folds: a sheet of dough in three as a letter, in four as a book, then shut and seen from its end; a whole dough by hand."""

from __future__ import annotations

from manchet.sheets.drawings.pen import THIN, Art, arrow, box, line, words

SHEET = 3.0
"""How thick the dough is drawn from its end."""


def letter(open_edge: str) -> Art:
    """One third over, the other third over that."""
    sheet = box(4, 18, 92, 30) + line("M34.7 18 V48 M65.3 18 V48", THIN, dash="3 3")
    numbers = words(19.5, 37, "1") + words(80.5, 37, "2")
    over = arrow(14, 15, 60, 15, 9) + arrow(86, 51, 40, 51, 9)
    shut = line("M68 84 H30 C22 84 22 92 30 92 H72 C84 92 84 76 72 76 H26", SHEET)
    mark = arrow(4, 76, 20, 76) + words(4, 70, open_edge, 9, "start")
    return Art(100, 98, sheet + numbers + over + shut + mark)


def book(open_edge: str) -> Art:
    """Both ends to the middle, then shut like a book."""
    sheet = box(4, 18, 92, 30) + line("M27 18 V48 M73 18 V48", THIN, dash="3 3") + line("M50 18 V48", THIN)
    numbers = words(15.5, 37, "1") + words(84.5, 37, "2")
    over = arrow(8, 15, 47, 15, 8) + arrow(92, 15, 53, 15, -8)
    shut = line("M30 73 H66 C73 73 73 66 66 66 H28 C15 66 15 90 28 90 H66 C73 90 73 83 66 83 H30", SHEET)
    mark = arrow(95, 78, 76, 78) + words(96, 61, open_edge, 9, "end")
    return Art(100, 98, sheet + numbers + over + shut + mark)


def by_hand(_: str) -> Art:
    """The whole dough in its tub, from above: each side over the middle, one after another."""
    tub = box(1, 1, 74, 68, THIN)
    dough = line("M38 6 C60 6 70 16 70 35 C70 54 60 64 38 64 C16 64 6 54 6 35 C6 16 16 6 38 6 Z")
    ways = (arrow(38, 10, 38, 29), arrow(38, 60, 38, 41), arrow(11, 35, 32, 35), arrow(65, 35, 44, 35))
    numbers = words(45, 20, "1") + words(45, 57, "2") + words(18, 30, "3") + words(58, 30, "4")
    return Art(76, 70, tub + dough + "".join(ways) + numbers)


FOLDS = {"fold in three": letter, "fold in four": book, "hand fold": by_hand}
