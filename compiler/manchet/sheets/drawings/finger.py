"""What a finger's mark in the dough says."""

from __future__ import annotations

from manchet.sheets.drawings.pen import THIN, Art, arrow, line, placed_at, words

SMALLER = 0.465


def finger_mark(captions: tuple[str, str, str]) -> Art:
    """Three doughs after a finger has gone in: it springs back, it fills slowly, it stays. Under each, what that means."""
    parts = []
    for at, deep in enumerate((0.0, 9.0, 18.0)):
        x = 34 + at * 68
        shape = f"M{x - 30} 66 C{x - 30} 40 {x - 20} 32 {x - 9} 32"
        if deep:
            shape += f" C{x - 5} 32 {x - 5} {32 + deep} {x} {32 + deep} C{x + 5} {32 + deep} {x + 5} 32 {x + 9} 32"
        else:
            shape += f" H{x + 9}"
        shape += f" C{x + 20} 32 {x + 30} 40 {x + 30} 66 Z"
        if at == 2:
            shape = (
                f"M{x - 31} 66 C{x - 33} 50 {x - 24} 40 {x - 9} 38 C{x - 5} 38 {x - 6} 56 {x} 56"
                f" C{x + 6} 56 {x + 5} 38 {x + 9} 38 C{x + 24} 40 {x + 33} 50 {x + 31} 66 Z"
            )
        parts.append(line(shape, fill="#fff"))
        if at < 2:
            was = 50 if at == 0 else 52
            parts.append(
                line(
                    f"M{x - 6} 33 C{x - 5} 36 {x - 5} {was} {x} {was} C{x + 5} {was} {x + 5} 36 {x + 6} 33",
                    THIN,
                    dash="2 2",
                )
            )
        if at == 0:
            parts.append(arrow(x, 48, x, 35))
        if at == 1:
            parts.append(arrow(x, 51, x, 44))
        parts.append(line(f"M{x - 33} 66 H{x + 33}", THIN))
    finger = line("M27.5 4 V16 C27.5 25 40.5 25 40.5 16 V4 M30.5 18.5 C30.5 16.5 37.5 16.5 37.5 18.5", THIN)
    doughs = placed_at(finger + "".join(parts), 0, 0, SMALLER)
    said = [words((34 + at * 68) * SMALLER, 42, text, bold=at == 1) for at, text in enumerate(captions)]
    return Art(204 * SMALLER, 45, doughs + "".join(said))
