"""A stage of which all goes on in one go: nobody weighs it again, so what is added is what its tub holds.

A scale of 5 g may round a poolish's three lines down and the poolish up. Both are right, and a baker who adds up finds
3 g that are in no bowl; so the later line takes its figure from the earlier ones.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.weighed_table import Table, WeighedLine
from manchet.quantities.printing import rounded


def adding_up(tables: Sequence[Table]) -> tuple[Table, ...]:
    """The tables with each line that is the whole of an earlier tub read as that tub: in working order, so that what
    one stage hands on is already so when the next is added up."""
    done: list[Table] = []
    for table in tables:
        lines = tuple(_as_the_tub(line, table, done, tables) for line in table.lines)
        done.append(table._replace(lines=lines, total=sum((line.reading.grams for line in lines), Fraction(0))))
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


def _changes(source: Table) -> bool:
    """Whether what goes on is less or more than what was weighed in: kept, given back, boiled off, topped up."""
    batch = source.making.stage
    return leaves_some(source) or batch.out != batch.into


def _as_the_tub(line: WeighedLine, table: Table, done: Sequence[Table], tables: Sequence[Table]) -> WeighedLine:
    source = next((t for t in done if t.making.stage.stage.key == line.weighed.portion.stage), None)
    if source is None or not goes_whole(source, tables) or _changes(source):
        return line
    held = sum((x.reading.grams for x in source.lines), Fraction(0))
    step = line.reading.step
    return line._replace(reading=line.reading._replace(grams=rounded(held / step, 0) * step))
