"""The heat of a bake over its minutes: for an oven that falls, or a bake of several phases."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.records import NamedTuple
from manchet.sheets.drawings.pen import LINE, THIN, Art, line, n, path_of, words


class Stretch(NamedTuple):
    """One phase: minutes, heat at its beginning and end in the house's degrees, and what it is called."""

    minutes: float
    start: float
    end: float
    label: str = ""


def curve(phases: Sequence[Stretch], degree: str, minute: str) -> Art:
    """Heat upwards, minutes to the right; every turning point has its figure."""
    whole = sum(phase.minutes for phase in phases) or 1.0
    heats = [heat for phase in phases for heat in (phase.start, phase.end)]
    low, high = min(heats), max(heats)
    room = max(high - low, 20.0)
    left, right, top, foot = 14.0, 190.0, 18.0, 72.0

    def at(minutes: float, heat: float) -> tuple[float, float]:
        return left + (right - left) * minutes / whole, foot - 14 - (foot - top - 14) * (heat - low) / room

    points: list[tuple[float, float]] = []
    parts = [line(f"M{n(left)} {n(top - 6)} V{n(foot)} H{n(right + 4)}", THIN)]
    gone, last = 0.0, None
    for phase in phases:
        points += [at(gone, phase.start), at(gone + phase.minutes, phase.end)]
        if phase.start != last:
            x, y = at(gone, phase.start)
            parts.append(words(x + 2, y - 4, f"{phase.start:.0f} {degree}", 9, "start"))
        if phase.end != phase.start:
            x, y = at(gone + phase.minutes, phase.end)
            parts.append(words(x - 2, y + 10, f"{phase.end:.0f} {degree}", 9, "end"))
        gone, last = gone + phase.minutes, phase.end
        x = at(gone, low)[0]
        parts.append(line(f"M{n(x)} {n(foot)} V{n(foot + 3)}", THIN))
        parts.append(words(x, foot + 13, f"{gone:.0f}"))
    parts.append(words(left, foot + 13, "0") + words((left + right) / 2, foot + 24, minute))
    return Art(204, foot + 28, "".join(parts) + line(path_of(points), LINE))
