"""What is made ahead of a bread or a dish, in the amount that is made of it."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.records import NamedTuple

if TYPE_CHECKING:
    from manchet.batch.parts_needed import PartNeeded
    from manchet.batch.work import Work
    from manchet.figures.baths import Because


class Ahead(NamedTuple):
    """A preparation in the amount that is made of it."""

    work: Work
    by: tuple[tuple[str, Fraction], ...] = ()
    """Who wants it, and grams."""
    dipped: bool = False
    """Pieces are dipped into it: what is wanted is what they take up."""
    because: Because | None = None
    """What decides how much is made; None where it is made as its file says."""
    batch: Fraction | None = None
    """Grams of it that its file makes at once; None of what is in per cent, and where nobody asks."""
    part: PartNeeded | None = None
    """Of a dish's part: how many slices or pieces of it are wanted."""

    @property
    def wanted(self) -> Fraction:
        return sum((grams for _, grams in self.by), Fraction(0))
