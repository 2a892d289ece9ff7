"""What an ingredient weighs today, and what it would weigh today by the other side: on the scale of its row, as the prep sheet has it."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.was_weighed import was_weighed
from manchet.batch.weighed_table import Table, WeighedLine
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.bowl import Bowl


def weight_today(key: str, share: Fraction, work: Work, m: Measures) -> str:
    """Of all of it; where it is weighed once, what that row says."""
    row = _only_row(key, work, m)
    if row is None:
        return m.mass(share * work.batch.flour)
    table, line = row
    return str(Bowl(table, work, m).weight(line.shown, line.reading.step))


def former_weight_today(key: str, share: Fraction, work: Work, m: Measures) -> str:
    """By the `share` of the other side, for today's flour: the *was* of the prep sheet."""
    row = _only_row(key, work, m)
    was = None if row is None else was_weighed(row[1], work, {row[1].weighed.portion.key: share})
    if row is None or was is None:
        return m.mass(share * work.batch.flour)
    table, line = row
    return str(Bowl(table, work, m).weight(was, line.reading.step))


def _only_row(key: str, work: Work, m: Measures) -> tuple[Table, WeighedLine] | None:
    """The one row of one bowl that it is weighed in; None where there are several."""
    tables = weighings(work, m.system).value
    rows = [(table, line) for table in tables for line in table.lines if line.weighed.portion.key == key]
    return rows[0] if len(rows) == 1 and rows[0][0].making.times == 1 and rows[0][1].dilution is None else None
