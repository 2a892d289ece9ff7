"""The floor of an oven or a tray from above, to scale, with the pieces in the order they go in."""

from __future__ import annotations

from typing import NamedTuple

from manchet.sheets.drawings.pen import LINE, THIN, Art, arrow, box, line, n, oval, words


class Floor(NamedTuple):
    """Millimetres. A round floor is `across` wide whatever `deep` says. `door`: one goes in at the front edge."""

    across: float
    deep: float
    is_round: bool = False
    door: bool = True


class Place(NamedTuple):
    """The middle of a piece, in millimetres from the left and from the back."""

    x: float
    y: float


def places(floor: Floor, wide: float, deep: float, gap: float, most: int) -> tuple[Place, ...]:
    """Where pieces of `wide` by `deep` mm lie with `gap` between them, in loading order: the back row first, each
    row from the sides to the middle, so that the peel never passes over a piece."""
    rows = max(0, int((floor.deep + gap) // (deep + gap)))
    found: list[Place] = []
    for row in range(rows):
        y = _spread(0, floor.deep, deep, gap, rows)[row]
        left, right = _chord(floor, y - deep / 2, y + deep / 2)
        number = min(int((right - left + gap) // (wide + gap)), most - len(found))
        found += [Place(x, y) for x in _outer_first(_spread(left, right, wide, gap, number))]
    return tuple(found)


def _chord(floor: Floor, top: float, foot: float) -> tuple[float, float]:
    """From where to where the floor reaches at both of these heights."""
    if not floor.is_round:
        return 0.0, floor.across
    half = floor.across / 2
    far = max(abs(top - half), abs(foot - half))
    reach = (half * half - far * far) ** 0.5 if far < half else 0.0
    return half - reach, half + reach


def _spread(start: float, end: float, wide: float, gap: float, number: int) -> list[float]:
    """The middles of so many pieces between two walls: evenly, and never nearer to each other than the gap."""
    if number < 1:
        return []
    free = end - start - number * wide
    between = max(gap, free / number)
    edge = (free - (number - 1) * between) / 2
    return [start + edge + wide / 2 + at * (wide + between) for at in range(number)]


def _outer_first(row: list[float]) -> list[float]:
    order: list[float] = []
    while row:
        order.append(row.pop(0))
        if row:
            order.append(row.pop())
    return order


def plan(floor: Floor, lie: tuple[Place, ...], wide: float, deep: float, door: str, size: str) -> Art:
    """The plan: `door` is the word at the front, `size` the measure under it ("46 × 33 cm")."""
    scale = 88 / floor.across
    high = floor.deep * scale if not floor.is_round else 88.0
    parts = [oval(50, 6 + 44, 44, 44) if floor.is_round else box(6, 6, 88, high)]
    for number, place in enumerate(lie, 1):
        x, y = 6 + place.x * scale, 6 + place.y * scale
        parts.append(oval(x, y, wide / 2 * scale, deep / 2 * scale, THIN, "#fff"))
        parts.append(words(x, y + 3.2, str(number)))
    foot = 6 + high
    if floor.door:
        parts.append(f'<path d="M34 {n(foot)} H66" fill="none" stroke="#fff" stroke-width="2.6"/>')
        parts.append(line(f"M34 {n(foot - 3)} V{n(foot + 3)} M66 {n(foot - 3)} V{n(foot + 3)}", LINE))
        parts.append(arrow(50, foot + 15, 50, foot + 3))
        parts.append(words(58, foot + 12, door, 9, "start"))
        foot += 10
    parts.append(words(50, foot + 14, size))
    return Art(100, foot + 18, "".join(parts))
