"""Weights as the kitchen's scales read them: the figures that every form prints."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.closing import cover_shortfall, is_flour, is_water, largest
from manchet.batch.dilution import READINGS, READINGS_OF_SPICE, Dilution, dilution_of
from manchet.batch.mixes import Making
from manchet.batch.model import Weighed
from manchet.batch.scales import COARSELY, FINELY, OUNCE, Reading, System, in_ounces, reading_of, row_reading, scales_of
from manchet.batch.tubs import reconcile
from manchet.batch.weighed_table import Table, WeighedLine, total_of
from manchet.batch.work import Work, once
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import graver, report
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import decimal, telling

NOTABLE = Fraction(1, 20)
"""A line moved by more than this is remarked on: a row is read to a twentieth, and on a scale that suits it moves by half of
that; two lots of yeast differ by more. Our own rule."""

READ_FINELY = frozenset({"salt", "yeast", "sweet-dough yeast"})
"""Classes that are weighed to a fiftieth; all else is to a twentieth."""

DISSOLVES = frozenset({"yeast", "sweet-dough yeast", "salt", "sweetener", "malt", "raising agent", "spice"})
"""What may be stirred into water or flour to be weighed. Never lye, never a culture."""


@once
def weighings(work: Work, system: System = System.METRIC) -> Outcome[tuple[Table, ...]]:
    """Every making of a work as its scales read, in working order: the figures that every form of it prints.

    What goes on whole is read as its tub (see `tubs`).
    """
    weighed = [weigh(making, work.kitchen, system) for making in work.mixes.makings]
    reports = tuple(report for table in weighed for report in table.diagnostics)
    return Outcome(reconcile([table.value for table in weighed]), reports)


def weigh(making: Making, kitchen: Kitchen, system: System = System.METRIC) -> Outcome[Table]:
    """One making of a stage as its scales read.

    Every row is rounded by itself to its scale, and the printed total is the sum of the rows. Only where that is short of
    the exact total by more than one step of the coarsest row do flour and water go up (see `closing`).

    Reports: `too-small-to-weigh` (a warning with a dilution, an error where there is no way out) and the note
    `moved-by-rounding` for a line that its scale moves by more than 5 %.
    """
    rows = [_line(weighed, kitchen, system) for weighed in making.weighed]
    for at, row in enumerate(rows):
        if row.reading.grams == 0 and row.wanted > 0:
            _dilute(rows, at, kitchen, system)
    lines = cover_shortfall(rows)
    steps = {_scale_step(line, kitchen, system) for line in lines}
    kept = tuple(
        (name, row_reading(grams, kitchen, system, COARSELY).grams or grams) for name, grams in making.stage.kept
    )
    table = Table(making, lines, total_of(lines), max(steps) if len(steps) > 1 else None, not kitchen.scales, kept)
    return Outcome(table, _reports(table, system))


def _line(weighed: Weighed, kitchen: Kitchen, system: System) -> WeighedLine:
    return WeighedLine(weighed, weighed.grams, _reading(weighed.grams, weighed, kitchen, system), False, None)


def _scale_step(line: WeighedLine, kitchen: Kitchen, system: System) -> Fraction:
    """What the row's scale reads to, whatever digits of it are printed."""
    return reading_of(line.wanted, kitchen, system, _part(line.weighed)).step


def _reading(grams: Fraction, weighed: Weighed, kitchen: Kitchen, system: System) -> Reading:
    return row_reading(grams, kitchen, system, _part(weighed))


def _part(weighed: Weighed) -> int:
    ingredient = weighed.portion.ingredient
    return FINELY if ingredient is not None and ingredient.class_ in READ_FINELY else COARSELY


def _dilute(rows: list[WeighedLine], at: int, kitchen: Kitchen, system: System) -> None:
    """Put a dilution on a row that rounds to nothing, and take its carrier off the carrier's row."""
    portion = rows[at].weighed.portion
    if portion.ingredient is None or portion.ingredient.class_ not in DISSOLVES:
        return
    reads = min(scale.reads for scale in scales_of(kitchen, system))
    readings = READINGS_OF_SPICE if portion.ingredient.class_ == "spice" else READINGS
    for carrier in _carriers(rows):
        stock = rows[carrier]
        found = dilution_of(rows[at].weighed.grams, reads, stock.weighed.portion.name, stock.wanted, readings)
        if carrier == at or found is None:
            continue
        used = reading_of(found.use, kitchen, system)
        rows[at] = rows[at]._replace(wanted=found.use, reading=used, dilution=found)
        wanted = stock.wanted - found.carried
        rows[carrier] = stock._replace(wanted=wanted, reading=_reading(wanted, stock.weighed, kitchen, system))
        return


def _carriers(rows: list[WeighedLine]) -> list[int]:
    """The stage's water; where it has none, or too little, the largest flour."""
    return [found for found in (largest(rows, is_water), largest(rows, is_flour)) if found is not None]


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
    step = line.reading.step
    message = (
        f"{_show(line.weighed.grams, step, system)} of {portion.name} in {stage} is too little for a scale "
        f"that reads {_show(step, step, system)}"
    )
    if way_out is None:
        return graver(report("too-small-to-weigh", portion.place, message, _finer(line)))
    help = (
        f"stir {_show(way_out.dissolve, step, system)} into {_show(way_out.into, step, system)} of {way_out.carrier} and use "
        f"{_show(way_out.use, step, system)} of that; the sheet takes the {way_out.carrier} off its own line"
    )
    return report("too-small-to-weigh", portion.place, message, help)


def _moved(line: WeighedLine, table: Table, system: System) -> Diagnostic:
    portion, grams, reading = line.weighed.portion, line.weighed.grams, line.reading
    message = (
        f"{portion.name} is {_three(grams, reading.step, system)} and the scale shows {_show(reading.grams, reading.step, system)}: "
        f"{decimal(line.moved * 100, 0)}% {'more' if reading.grams > grams else 'less'}"
    )
    return report("moved-by-rounding", portion.place, message, _finer(line))


FINER = (Fraction(1, 10), Fraction(1, 100), Fraction(1, 1000))
"""Grams that finer scales read, as they are sold."""


def _finer(line: WeighedLine) -> str:
    """The first scale finer than the one used that reads to a quarter of the line; where none is sold, make more."""
    step = next((g for g in FINER if g < line.reading.step and g * 4 <= line.weighed.grams), None)
    if step is None:
        return "make more at once"
    return f"make more at once, or describe a finer scale in the kitchen: `scale fine`, under it `reads {decimal(step, 3)} g`"


def _three(grams: Fraction, step: Fraction, system: System) -> str:
    """A small weight with three digits that count, so that it differs from what a scale makes of it."""
    value, unit = _as_printed(grams, step, system)
    digits = next((places for places in range(6) if abs(value) * 10**places >= 100), 6)
    return f"{decimal(value, telling(value, digits))} {unit}"


def _show(grams: Fraction, step: Fraction, system: System) -> str:
    """A small weight in words of a report: two digits that count."""
    value, unit = _as_printed(grams, step, system)
    digits = 0 if value >= 1000 else 1 if value >= 10 else 2 if value >= Fraction(1, 10) else 3
    return f"{decimal(value, telling(value, digits))} {unit}"


def _as_printed(grams: Fraction, step: Fraction, system: System) -> tuple[Fraction, str]:
    """A weight in the unit that a scale of this `step` is read in."""
    return (grams / OUNCE, "oz") if in_ounces(step, system) else (grams, "g")
