"""What one stage hands on to another, so that the figures at both ends agree.

A scale of 5 g may round a poolish's three rows down and the poolish up. Both are right, and a baker who adds up finds 3 g
that are in no bowl. So what all goes on is read as its tub; and a tub of which parts are weighed off holds them all.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.closing import raise_flour_and_water
from manchet.batch.weighed_table import Table, WeighedLine, total_of
from manchet.quantities.printing import round_to

NOTHING = Fraction(0)


def reconcile(tables: Sequence[Table]) -> tuple[Table, ...]:
    """The tables of a work, in working order, so that what one stage hands on is already so when the next is added up."""
    done: list[Table] = []
    for table in tables:
        lines = tuple(_as_the_tub(line, done, tables) for line in table.lines)
        if not goes_whole(table, tables):
            lines = raise_flour_and_water(lines, _lacking(table, lines, tables))
        done.append(table._replace(lines=lines, total=total_of(lines)))
    return tuple(done)


def goes_whole(source: Table, tables: Sequence[Table]) -> bool:
    """Whether all of a stage goes into one bowl at once, kept parts aside: then there is nothing to weigh off."""
    batch = source.making.stage
    lines = [(line, table) for table in tables for line in table.lines if line.weighed.portion.stage == batch.stage.key]
    if len(lines) != 1 or batch.left:
        return False
    line, user = lines[0]
    return user.making.times == source.making.times and line.reading.goes == 1 and line.dilution is None


def leaves_some(source: Table) -> bool:
    """Whether a part is kept or given back before the rest goes on."""
    batch = source.making.stage
    return bool(batch.kept or batch.returned)


def _as_the_tub(line: WeighedLine, done: Sequence[Table], tables: Sequence[Table]) -> WeighedLine:
    source = next((t for t in done if t.making.stage.stage.key == line.weighed.portion.stage), None)
    if source is None or not goes_whole(source, tables) or _changes(source):
        return line
    step = line.reading.step
    return line._replace(reading=line.reading._replace(grams=round_to(source.total / step, 0) * step))


def _changes(source: Table) -> bool:
    """Whether what goes on is less or more than what was weighed in: kept, given back, boiled off, topped up."""
    batch = source.making.stage
    return leaves_some(source) or batch.out != batch.into


def _lacking(source: Table, lines: Sequence[WeighedLine], tables: Sequence[Table]) -> Fraction:
    """Grams by which one making of a stage holds less than is taken of it as printed, and kept; 0 or less where it does not."""
    stage, times = source.making.stage, source.making.times
    taken = sum(
        (
            line.reading.grams * table.making.times
            for table in tables
            for line in table.lines
            if line.weighed.portion.stage == stage.stage.key
        ),
        NOTHING,
    )
    if not taken:
        return NOTHING
    holds = total_of(lines) * times + stage.out - stage.into
    return (taken + sum((grams for _, grams in source.kept), NOTHING) - holds) / times


def given_back(table: Table, tables: Sequence[Table]) -> tuple[tuple[str, Fraction], ...]:
    """Grams of each culture that go from a stage back to the pot, by its name: as much as came in, as its row reads."""
    return tuple((name, _as_weighed(name, grams, tables)) for name, grams in table.making.stage.returned)


def _as_weighed(name: str, grams: Fraction, tables: Sequence[Table]) -> Fraction:
    """What stands in the row that weighs just so much of it; the same grams where no row does."""
    rows = ((line, table.making.times) for table in tables for line in table.lines)
    weighed = (
        line.reading.grams * times
        for line, times in rows
        if line.weighed.portion.name == name and line.weighed.grams * times == grams
    )
    return next(weighed, grams)
