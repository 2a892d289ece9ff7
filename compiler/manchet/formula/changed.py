"""What a formula was asked to be beside what its file says: ingredients swapped, waits moved."""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.formula.ranges import Range
from manchet.records import NamedTuple

OPTION = "--swap"
"""The place of a swap that was asked for with the command."""


class Swapped(NamedTuple):
    """One ingredient put in another's place: `factor` grams of it for a gram, by whom, and what moved with it.

    `share` is what was taken out, and `moved` what was put in elsewhere (below 0: taken off), in grams per gram of all
    flour. `said` is what did not stay as it was.
    """

    off: str
    on: str
    factor: Fraction
    share: Fraction
    moved: tuple[tuple[str, Fraction], ...]
    source: str
    said: str
    place: Place
    of_all_flour: Fraction | None = None
    """Where a yeast and a culture change places: the share of all flour that the swap gives, which is its rule; else None."""
    into_culture: bool = False
    """That share is of the flour now in the culture, and not the weight of a yeast."""


class Moved(NamedTuple):
    """A wait that was asked for at another time or warmth, and its yeast: `times` as much. Shares are per gram of flour."""

    stage: str
    yeast: str
    times: Fraction
    written: Range
    """Seconds; several waits taken together where `together`."""
    written_celsius: Range
    seconds: Range | None
    """None: as written."""
    celsius: Range | None
    share: Fraction
    """The yeast of the stage as written."""
    in_all: Fraction
    """That yeast in all stages as written."""
    of_stage: Fraction | None
    """The same as the file says it, of the stage's own flour; None where it says none."""
    together: bool
    carries_on: bool
    """Most of the bread's yeast: the dough it goes into moves too."""
    place: Place

    @property
    def in_all_now(self) -> Fraction:
        return self.in_all + (self.times - 1) * self.share
