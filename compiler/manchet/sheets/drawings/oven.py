"""The floor of an oven or a tray from above, to scale, with the pieces in the order they go in."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.oven.floor import Spot
from manchet.kitchen.model import Floor
from manchet.sheets.drawings.pen import LINE, THIN, Art, arrow, box, line, n, oval, words

DOOR = Fraction(40, 100)
"""How much of the front a door takes whose width nobody has measured."""


def plan(
    floor: Floor,
    lie: tuple[Spot, ...],
    wide: Fraction,
    deep: Fraction,
    door: str,
    size: str,
    opening: Fraction | None = None,
) -> Art:
    """The plan: `door` is the word at the front ("": a tray has none), `opening` its width in mm; `size` the measure
    under it ("46 × 33 cm")."""
    scale = 88 / float(floor.across)
    high = float(floor.deep) * scale if not floor.is_round else 88.0
    parts = [oval(50, 6 + 44, 44, 44) if floor.is_round else box(6, 6, 88, high)]
    for number, place in enumerate(lie, 1):
        x, y = 6 + float(place.x) * scale, 6 + float(place.y) * scale
        parts.append(oval(x, y, float(wide) / 2 * scale, float(deep) / 2 * scale, THIN, "#fff"))
        parts.append(words(x, y + 3.2, str(number)))
    foot = 6 + high
    if door:
        half = min(44.0, float(opening or floor.across * DOOR) / 2 * scale)
        left, right = n(50 - half), n(50 + half)
        parts.append(f'<path d="M{left} {n(foot)} H{right}" fill="none" stroke="#fff" stroke-width="2.6"/>')
        parts.append(line(f"M{left} {n(foot - 3)} V{n(foot + 3)} M{right} {n(foot - 3)} V{n(foot + 3)}", LINE))
        parts.append(arrow(50, foot + 15, 50, foot + 3))
        parts.append(words(58, foot + 12, door, 9, "start"))
        foot += 10
    parts.append(words(50, foot + 14, size))
    return Art(100, foot + 18, "".join(parts))
