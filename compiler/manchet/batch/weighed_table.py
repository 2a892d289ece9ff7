"""The weighing of one making of a stage, as it stands on a sheet."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.dilution import Dilution, nearest
from manchet.batch.mixes import Making
from manchet.batch.model import Weighed
from manchet.batch.scales import Reading
from manchet.formula.model import Goes
from manchet.records import NamedTuple


class WeighedLine(NamedTuple):
    """One line to weigh. `weighed` is what the formula asks, exact; `reading` is what stands on the sheet."""

    weighed: Weighed
    wanted: Fraction
    """Exact grams for this line: as weighed, less what a dilution brings of it, or the part of a dilution to use."""
    reading: Reading
    closes: bool
    """This line went up for what rounding left short."""
    dilution: Dilution | None
    """The bench's way out for an amount that no scale here can weigh: `reading` is then the part of it to use."""

    @property
    def shown(self) -> Fraction:
        """Grams that stand on the sheet: as the scale reads, or exact where it would read nothing of something."""
        return self.reading.grams or self.wanted

    @property
    def moved(self) -> Fraction:
        """By what share of itself the ingredient is moved (1/50 is 2 %)."""
        if self.dilution is not None:
            exact, given = self.weighed.grams, self.dilution.brings
        else:
            exact, given = self.wanted, self.reading.grams
        return abs(given - exact) / exact if exact else Fraction(0)


class Table(NamedTuple):
    """The weighing of one making of a stage. `total` is exactly the sum of the lines' readings, in grams."""

    making: Making
    lines: tuple[WeighedLine, ...]
    total: Fraction
    fine: Fraction | None
    """Lines whose `step` is below this are for the fine scale; None if one scale weighs them all."""
    assumed: bool
    """The kitchen gives no scale: 1 g, and 0.1 g up to 20 g, are assumed (in pounds quarter ounces, and these under 8 oz)."""
    kept: tuple[tuple[str, Fraction], ...] = ()
    """What all makings keep for next time, by its name: grams as the scale shows them, exact where it would show nothing."""


def more_on_the_scale(line: WeighedLine) -> Fraction:
    """Grams that may go in on top of a row, as the flour asks: what the same scale reads at the high end less what it reads at
    the low one, so that what is poured to the last gram ends at the high end."""
    portion = line.weighed.portion
    if not portion.more:
        return Fraction(0)
    exact = line.weighed.grams * portion.more
    high = nearest(line.weighed.grams + exact, line.reading.step)
    return high - line.shown if high > line.shown else exact


def total_of(lines: Sequence[WeighedLine]) -> Fraction:
    """Grams that stand on the sheet, summed: a printed total is never another figure."""
    return sum((line.reading.grams for line in lines), Fraction(0))


def part_of(line: WeighedLine, goes: Goes, table: Table) -> Fraction:
    """Grams of a row held back that one step adds, where several add some of it: on its scale, and together the row.

    Each part ends at the reading nearest to what has gone in by then; a last one that leaves nothing takes the rest.
    """
    stage, key = table.making.stage.stage, line.weighed.portion.key
    parts = [
        one for step in stage.steps for one in step.goes if one.key == key and one.share is not None and not one.beyond
    ]
    whole = line.weighed.portion.share
    before = so_far = Fraction(0)
    for part in parts:
        so_far += part.share or Fraction(0)
        reached = (
            line.reading.grams if so_far >= whole else nearest(line.reading.grams * so_far / whole, line.reading.step)
        )
        if part is goes:
            return reached - before
        before = reached
    return line.reading.grams
