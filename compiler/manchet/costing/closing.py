"""Figures of a table rounded so that they add up to their rounded total: by largest remainder."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.quantities.printing import round_to


def closing_figures(figures: Sequence[Fraction], decimals: int) -> tuple[Fraction, ...]:
    """Figures, none below 0, in so many decimals, whose sum is their exact sum rounded half up. Each is rounded down, and what the
    total still wants goes, a unit each, to those that lost most; of equals to the larger, then to the first."""
    scale = 10**decimals
    total = round_to(sum(figures, Fraction(0)), decimals) * scale
    down = [figure * scale // 1 for figure in figures]
    lost = [figure * scale - whole for figure, whole in zip(figures, down, strict=True)]
    wants = int(total) - sum(down)
    first = sorted(range(len(figures)), key=lambda at: (-lost[at], -figures[at], at))
    for at in first[:wants]:
        down[at] += 1
    return tuple(Fraction(whole, scale) for whole in down)
