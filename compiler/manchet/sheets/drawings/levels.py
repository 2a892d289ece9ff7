"""How full a tin or a basket is, before and after; and what a finger's mark says."""

from __future__ import annotations

from manchet.sheets.drawings.pen import LINE, THIN, Art, arrow, line, n, words

TIN = "M12 16 L22 84 H78 L88 16"
"""Its rim at 16, its floor at 84."""
RIM, FLOOR = 16.0, 84.0
BASKET = "M8 30 C10 66 28 84 50 84 C72 84 90 66 92 30"


def tin(after: float, before_word: str, after_word: str, label: str) -> Art:
    """A tin cut through. `after` is how much of its height is full in the end; `label` the distance to the rim.

    Where it stood before is drawn at about half of that, dashed: the eye sees the rise, no figure is claimed.
    """
    high = RIM + (FLOOR - RIM) * (1 - min(after, 1.15))
    low = FLOOR - (FLOOR - high) * 0.52
    dough = line(
        f"M{n(_left(high))} {n(high + 4)} C30 {n(high - 4)} 70 {n(high - 4)} {n(100 - _left(high))} {n(high + 4)}"
    )
    start = line(
        f"M{n(_left(low))} {n(low + 3)} C34 {n(low - 3)} 66 {n(low - 3)} {n(100 - _left(low))} {n(low + 3)}",
        THIN,
        dash="3 3",
    )
    rim = line("M4 16 H12 M88 16 H96", LINE)
    said = words(50, high + 14, after_word, 8) + words(50, low + 13, before_word, 8)
    return Art(100, 92, line(TIN) + rim + dough + start + said + _gap(high, label))


def basket(after: float, before_word: str, after_word: str, label: str) -> Art:
    """The same for a proving basket."""
    rim = 30.0
    high = rim + (84 - rim) * (1 - min(after, 1.15))
    low = 84 - (84 - high) * 0.55
    inset = 2 + (high - rim) * 0.14
    dough = line(f"M{n(8 + inset)} {n(high + 3)} C28 {n(high - 7)} 72 {n(high - 7)} {n(92 - inset)} {n(high + 3)}")
    start = line(
        f"M{n(20 + (low - 55) * 0.5)} {n(low + 2)} C36 {n(low - 5)} 64 {n(low - 5)} {n(80 - (low - 55) * 0.5)} {n(low + 2)}",
        THIN,
        dash="3 3",
    )
    said = words(50, high + 10, after_word, 8) + words(50, low + 10, before_word, 8)
    return Art(100, 92, line(BASKET) + line("M3 30 H10 M90 30 H97") + dough + start + said + _gap(high, label, rim))


def _left(y: float) -> float:
    """Where the tin's left wall is at this height."""
    return 12 + (y - RIM) / (FLOOR - RIM) * 10


def _gap(high: float, label: str, rim: float = RIM) -> str:
    if not label:
        return ""
    level = line(f"M30 {n(rim)} H70", THIN, dash="1.5 2.5")
    return level + arrow(50, rim, 50, high - 1) + words(54, rim - 5, label, 9, "start")


def finger_mark(captions: tuple[str, str, str]) -> Art:
    """Three doughs after a finger has gone in: it springs back, it fills slowly, it stays.

    Each caption says what is seen and, after a colon, what to do.
    """
    parts = []
    for at, (deep, caption) in enumerate(zip((0.0, 9.0, 18.0), captions, strict=True)):
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
        first, _, then = caption.partition(": ")
        parts.append(words(x, 78, first, 9) + words(x, 89, then, 9))
    finger = line("M27.5 4 V16 C27.5 25 40.5 25 40.5 16 V4 M30.5 18.5 C30.5 16.5 37.5 16.5 37.5 18.5", THIN)
    return Art(204, 94, finger + "".join(parts))
