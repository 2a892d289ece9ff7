"""Weights as the kitchen's scales read them, closing on flour or water so that the lines add up to the total."""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from math import ceil
from typing import NamedTuple

from manchet.batch.dilution import READINGS, READINGS_OF_SPICE, Dilution, dilution_of, nearest
from manchet.batch.mixes import Making
from manchet.batch.model import Weighed
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.outcome import Outcome
from manchet.kitchen.model import Kitchen, Scale
from manchet.quantities.printing import decimal, telling

OUNCE = Fraction(45359237, 1600000)
"""Grams, exact (avoirdupois)."""

NOTABLE = Fraction(2, 100)
"""A line moved by more than this is remarked on. Our own rule."""

DISSOLVES = frozenset({"yeast", "sweet-dough yeast", "salt", "sweetener", "malt", "raising agent", "spice"})
"""What may be stirred into water or flour to be weighed. Never lye, never a culture."""


class System(Enum):
    """The units a whole sheet is printed in."""

    METRIC = "metric"
    US = "US customary"


class Reading(NamedTuple):
    """An amount as a scale shows it: a whole number of `step`s, in grams (a quarter ounce is exact too)."""

    grams: Fraction
    step: Fraction
    scale: str
    """The kitchen's name for the scale, "" for an assumed one."""
    goes: int
    """In how many goes, where the scale cannot hold it all; else 1."""


class WeighedLine(NamedTuple):
    """One line to weigh. `weighed` is what the formula asks, exact; `reading` is what stands on the sheet."""

    weighed: Weighed
    wanted: Fraction
    """Exact grams for this line: as weighed, less what a dilution brings of it, or the part of a dilution to use."""
    reading: Reading
    closes: bool
    """This line took up what rounding left over."""
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
    """The kitchen gives no scale: 1 g, and 0.1 g up to 20 g, are assumed (quarter ounces, and 0.01 oz under 8 oz)."""


ASSUMED = {
    System.METRIC: (Scale("", Fraction(1)), Scale("", Fraction(1, 10), Fraction(20))),
    System.US: (Scale("", OUNCE / 4), Scale("", OUNCE / 100, 8 * OUNCE - OUNCE / 200)),
}

OUNCE_STEPS = tuple(OUNCE * Fraction(step) for step in ("0.005", "0.01", "0.05", "0.1", "0.25", "0.5", "1"))
"""What scales show in ounces."""


def scales_of(kitchen: Kitchen, system: System) -> tuple[Scale, ...]:
    """The kitchen's scales, or the assumed ones.

    In US customary units a scale that reads in grams is taken to show the next coarser of
    0.005, 0.01, 0.05, 0.1, 1/4, 1/2 and 1 oz (a scale that reads 1 g shows 0.05 oz).
    """
    if not kitchen.scales:
        return ASSUMED[system]
    if system is System.METRIC:
        return kitchen.scales
    return tuple(s._replace(reads=next((o for o in OUNCE_STEPS if o >= s.reads), OUNCE)) for s in kitchen.scales)


def reading_of(grams: Fraction, kitchen: Kitchen, system: System = System.METRIC) -> Reading:
    """The amount on the scale for it: the coarsest that reads to a fiftieth of it, else the finest that can hold it.

    So what rounding moves is at most a hundredth (our own rule): 497 g of flour is weighed on a scale that reads 5 g.

    In quarter ounces this is the rule of the US Armed Forces Recipe Service (TM 10-412, card A-1): .00-.12 is nothing,
    .13-.37 a quarter, and so on.
    """
    scales = scales_of(kitchen, system)
    holding = [s for s in scales if s.up_to is None or s.up_to >= grams]
    if not holding:
        scale = max(scales, key=lambda s: s.up_to or Fraction(0))
        goes = ceil(grams / scale.up_to) if scale.up_to else 1
        return Reading(nearest(grams, scale.reads), scale.reads, scale.name, goes)
    coarse = [s for s in holding if s.reads * 50 <= grams]
    scale = max(coarse, key=lambda s: s.reads) if coarse else min(holding, key=lambda s: s.reads)
    return Reading(nearest(grams, scale.reads), scale.reads, scale.name, 1)


def weigh(making: Making, kitchen: Kitchen, system: System = System.METRIC) -> Outcome[Table]:
    """One making of a stage as its scales read.

    Every line is rounded to its own scale; then the largest flour or water line takes up, in whole readings of its own
    scale, what rounding left of the exact total. So the printed lines add up to the printed total, which is within half
    a reading of the exact one, and nothing is ever moved on to salt, yeast, malt, lye or a culture.

    Reports: `too-small-to-weigh` (a warning with a dilution, an error where there is no way out) and the note
    `moved-by-rounding` for a line that its scale moves by more than 2 %.
    """
    lines = [_line(weighed, kitchen, system) for weighed in making.weighed]
    closing = _closing(making)
    for at, line in enumerate(lines):
        if line.reading.grams == 0 and line.wanted > 0:
            _dilute(lines, at, closing, kitchen, system)
    if closing is not None and lines[closing].reading.grams > 0:
        left_over = sum((line.wanted - line.reading.grams for line in lines), Fraction(0))
        lines[closing] = _close(lines[closing], left_over)
    steps = {line.reading.step for line in lines}
    table = Table(
        making=making,
        lines=tuple(lines),
        total=sum((line.reading.grams for line in lines), Fraction(0)),
        fine=max(steps) if len(steps) > 1 else None,
        assumed=not kitchen.scales,
    )
    return Outcome(table, _reports(table, system))


def _line(weighed: Weighed, kitchen: Kitchen, system: System) -> WeighedLine:
    return WeighedLine(weighed, weighed.grams, reading_of(weighed.grams, kitchen, system), False, None)


def _closing(making: Making) -> int | None:
    """Where the largest flour or water line stands; one that is held back only if there is no other."""

    def rank(at: int) -> tuple[bool, Fraction]:
        return not making.weighed[at].portion.held, making.weighed[at].grams

    flours_and_waters = [
        at
        for at, weighed in enumerate(making.weighed)
        if weighed.portion.ingredient is not None
        and (weighed.portion.ingredient.class_ == "water" or weighed.portion.is_flour)
        and weighed.portion.ingredient.class_ not in ("culture", "malt", "lye")
    ]
    return max(flours_and_waters, key=rank, default=None)


def _close(line: WeighedLine, left_over: Fraction) -> WeighedLine:
    """Take up what is left over, in whole readings; never so much that nothing of the line remains."""
    step = line.reading.step
    grams = max(line.reading.grams + nearest(left_over, step), step)
    return line._replace(reading=line.reading._replace(grams=grams), closes=grams != line.reading.grams)


def _dilute(lines: list[WeighedLine], at: int, closing: int | None, kitchen: Kitchen, system: System) -> None:
    """Put a dilution on a line that rounds to nothing, and take its carrier off the carrier's line."""
    portion = lines[at].weighed.portion
    if portion.ingredient is None or portion.ingredient.class_ not in DISSOLVES:
        return
    reads = min(scale.reads for scale in scales_of(kitchen, system))
    readings = READINGS_OF_SPICE if portion.ingredient.class_ == "spice" else READINGS
    for carrier in _carriers(lines, closing):
        stock = lines[carrier]
        found = dilution_of(lines[at].weighed.grams, reads, stock.weighed.portion.name, stock.wanted, readings)
        if carrier == at or found is None:
            continue
        used = reading_of(found.use, kitchen, system)
        lines[at] = lines[at]._replace(wanted=found.use, reading=used, dilution=found)
        wanted = stock.wanted - found.carried
        lines[carrier] = stock._replace(wanted=wanted, reading=reading_of(wanted, kitchen, system))
        return


def _carriers(lines: list[WeighedLine], closing: int | None) -> list[int]:
    """The stage's water; where it has none, or too little, the line that closes."""
    waters = [
        at
        for at, line in enumerate(lines)
        if line.weighed.portion.ingredient is not None and line.weighed.portion.ingredient.class_ == "water"
    ]
    first = [max(waters, key=lambda at: lines[at].wanted)] if waters else []
    return first + ([closing] if closing is not None and closing not in first else [])


def _reports(table: Table, system: System) -> tuple[Diagnostic, ...]:
    reports = []
    for line in table.lines:
        portion, grams = line.weighed.portion, line.weighed.grams
        if portion.to_taste:
            continue
        if line.reading.grams == 0 and grams > 0:
            reports.append(_too_small(line, table, system, None))
        elif line.dilution is not None:
            reports.append(_too_small(line, table, system, line.dilution))
        elif line.moved > NOTABLE:
            reports.append(_moved(line, table, system))
    return tuple(reports)


def _too_small(line: WeighedLine, table: Table, system: System, way_out: Dilution | None) -> Diagnostic:
    portion = line.weighed.portion
    stage = table.making.stage.stage.name or table.making.stage.stage.word
    message = (
        f"{_show(line.weighed.grams, system)} of {portion.name} in {stage} is too little for a scale "
        f"that reads {_show(line.reading.step, system)}"
    )
    if way_out is None:
        return Diagnostic(
            "too-small-to-weigh", Severity.ERROR, message, portion.place,
            _finer(line),
        )  # fmt: skip
    return Diagnostic(
        "too-small-to-weigh", Severity.WARNING, message, portion.place,
        f"stir {_show(way_out.dissolve, system)} into {_show(way_out.into, system)} of {way_out.carrier} and use "
        f"{_show(way_out.use, system)} of that; the sheet takes the {way_out.carrier} off its own line",
    )  # fmt: skip


def _moved(line: WeighedLine, table: Table, system: System) -> Diagnostic:
    portion, grams, reading = line.weighed.portion, line.weighed.grams, line.reading
    return Diagnostic(
        "moved-by-rounding", Severity.NOTE,
        f"{portion.name} is {_three(grams, system)} and the scale shows {_show(reading.grams, system)}: "
        f"{decimal(line.moved * 100, 0)}% {'more' if reading.grams > grams else 'less'}",
        portion.place,
        _finer(line),
    )  # fmt: skip


FINER = (Fraction(1, 10), Fraction(1, 100), Fraction(1, 1000))
"""Grams that finer scales read, as they are sold."""


def _finer(line: WeighedLine) -> str:
    """The first scale finer than the one used that reads to a quarter of the line; where none is sold, make more."""
    step = next((g for g in FINER if g < line.reading.step and g * 4 <= line.weighed.grams), None)
    if step is None:
        return "make more at once"
    return f"make more at once, or describe a finer scale in the kitchen: `scale fine`, under it `reads {decimal(step, 3)} g`"


def _three(grams: Fraction, system: System) -> str:
    """A small weight with three digits that count, so that it differs from what a scale makes of it."""
    value, unit = (grams, "g") if system is System.METRIC else (grams / OUNCE, "oz")
    digits = next((places for places in range(6) if abs(value) * 10**places >= 100), 6)
    return f"{decimal(value, telling(value, digits))} {unit}"


def _show(grams: Fraction, system: System) -> str:
    """A small weight in words of a report: two digits that count."""
    value, unit = (grams, "g") if system is System.METRIC else (grams / OUNCE, "oz")
    digits = 0 if value >= 1000 else 1 if value >= 10 else 2 if value >= Fraction(1, 10) else 3
    return f"{decimal(value, telling(value, digits))} {unit}"
