"""Which of a form's layouts is printed: the one in which everything has room, of those the one that takes the fewest sides of
paper, and of those the first named."""

from __future__ import annotations

from collections.abc import Callable
from math import ceil
from typing import Any

from manchet.records import NamedTuple


class PageLayout(NamedTuple):
    """One way of setting a form: a word that stands in the class of the page's body, where the style waits for it."""

    name: str
    least: int = 100
    """Per cent of the height that the work has in the form's first layout, to which this one can bring it down. One that
    could not save a side is not tried."""
    sides: int = 1
    """It takes so many sides at least: its page is turned."""
    over: int = 0
    """Printed in place of all others where these take more sides than that, however many it takes; 0 for a usual layout."""


NORMAL = PageLayout("normal")

FILLED = "filled"
"""In the class of the body where the fillers are printed: what stands in a `filler` is left out unless it adds no side."""


BROKEN = 0.35
"""Of a side, at most: what is said again where a table goes on overleaf, or goes over with what may not be parted from it. Our own rule."""


class LaidOut(NamedTuple):
    """A page laid out: `classes` are the words of its layout, heights are in sides of paper."""

    classes: str
    sides: int
    height: float
    """Of all that is on it, without what is left white at the ends of its sides."""
    fillers: float = 0.0
    """Of what is a filler, where it is printed."""
    document: Any = None
    crowded: int = 0
    """Places on its sides that do not hold what stands in them."""
    taken: float = 0.0
    """Of the fullest place, how much of its height is taken: over 1 where it does not hold what stands in it."""

    @property
    def measure(self) -> tuple[int, int]:
        """The lower the better."""
        return self.crowded, self.sides

    @property
    def work(self) -> float:
        return self.height - self.fillers


def fewest_sides(layouts: tuple[PageLayout, ...], lay_out: Callable[[str], LaidOut]) -> LaidOut:
    """The layout to print. `lay_out` is asked as seldom as can be: setting type is what a build takes its time for."""
    first = best = _filled_if_free(layouts[0], lay_out)
    for layout in layouts[1:]:
        if layout.over:
            if best.sides > layout.over:
                return _filled_if_free(layout, lay_out)
        elif (best.crowded and first.taken * layout.least <= 100) or (
            not best.crowded and max(layout.sides, _sides_at_least(first.work * layout.least / 100)) < best.sides
        ):
            laid = _filled_if_free(layout, lay_out)
            if laid.measure < best.measure:
                best = laid
    return best


def _filled_if_free(layout: PageLayout, lay_out: Callable[[str], LaidOut]) -> LaidOut:
    filled = lay_out(f"{layout.name} {FILLED}")
    if (
        not filled.fillers
        or filled.sides <= layout.sides
        or _sides_at_least(filled.work - BROKEN * (filled.sides - 1)) >= filled.sides
    ):
        return filled
    bare = lay_out(layout.name)
    return bare if bare.sides < filled.sides else filled


def _sides_at_least(height: float) -> int:
    return max(1, ceil(height))
