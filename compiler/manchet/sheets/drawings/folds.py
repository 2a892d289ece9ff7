"""Folds: a sheet of dough in three as a letter, in four as a book, then shut and seen from its end; a whole dough by hand."""

from __future__ import annotations

from manchet.sheets.drawings.pen import HIGHEST, THIN, Art, arrow, box, letters, line, placed_at, words

SHEET = 3.4
"""How thick the dough is drawn from its end."""
SMALLER = 0.62
HALF = 50.0
"""Where the view from above ends, and that from the end begins."""


def letter(open_edge: str) -> Art:
    """One third over, the other third over that; beside it the three layers from their end."""
    sheet = box(2, 16, 44, 22) + line("M16.7 16 V38 M31.3 16 V38", THIN, dash="3 3")
    numbers = words(9.3, 30, "1") + words(38.7, 30, "2")
    over = arrow(7, 13, 29, 13, 7) + arrow(41, 41, 19, 41, 7)
    shut = line("M68 20 H30 C22 20 22 28 30 28 H72 C84 28 84 12 72 12 H26", SHEET)
    ends = placed_at(shut, HALF + 8 - 22 * SMALLER, 16 - 12 * SMALLER, SMALLER) + arrow(HALF + 1, 16, HALF + 8, 16)
    return Art(95, 52, sheet + numbers + over + ends + words(HALF + 22, 44, open_edge), 2)


def book(open_edge: str) -> Art:
    """Both ends to the middle, then shut like a book; beside it the four layers from their end."""
    sheet = box(2, 16, 44, 22) + line("M13 16 V38 M35 16 V38", THIN, dash="3 3") + line("M24 16 V38", THIN)
    numbers = words(7.5, 30, "1") + words(40.5, 30, "2")
    over = arrow(4, 13, 22, 13, 6) + arrow(44, 13, 26, 13, -6)
    shut = line("M30 17 H66 C73 17 73 10 66 10 H28 C15 10 15 34 28 34 H66 C73 34 73 27 66 27 H30", SHEET)
    ends = placed_at(shut, HALF - 15 * SMALLER, 15 - 10 * SMALLER, SMALLER) + arrow(94, 22.5, HALF + 37, 22.5)
    return Art(95, 52, sheet + numbers + over + ends + words(HALF + 22, 44, open_edge), 2)


BY_HAND = HIGHEST / 70
"""Millimetres of a unit of the tub."""


def by_hand(_: str) -> Art:
    """The whole dough in its tub, from above: each side over the middle, one after another."""
    tub, size = box(1, 1, 74, 68, THIN), letters(BY_HAND)
    dough = line("M38 6 C60 6 70 16 70 35 C70 54 60 64 38 64 C16 64 6 54 6 35 C6 16 16 6 38 6 Z")
    ways = (arrow(38, 10, 38, 29), arrow(38, 60, 38, 41), arrow(11, 35, 32, 35), arrow(65, 35, 44, 35))
    places = (("1", 46, 22), ("2", 46, 58), ("3", 18, 30), ("4", 59, 30))
    numbers = "".join(words(x, y, number, size) for number, x, y in places)
    return Art(76, 70, tub + dough + "".join(ways) + numbers, unit=BY_HAND)


FOLDS = {"fold in three": letter, "fold in four": book, "hand fold": by_hand}
