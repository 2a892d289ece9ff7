"""Every row of `lines/lines.txt`: what is read means its normal form, and what is asked offers what to type."""

from __future__ import annotations

from corpus.lines.reading import Row, errors_at, reports_at, rows, tree_of
from every import every

READ = [(row,) for row in rows() if row.normal]
LOOSE = [(row,) for row in rows() if row.normal and row.normal != row.line]


@every(READ, at_least=500)
def test_a_line_is_read(row: Row) -> None:
    usual = {report.name for report in errors_at(row.where, row.normal)}
    assert [report.name for report in errors_at(row.where, row.line) if report.name not in usual] == []


@every(LOOSE, at_least=400)
def test_a_loose_line_and_its_normal_form_have_one_tree(row: Row) -> None:
    assert tree_of(row.where, row.line) == tree_of(row.where, row.normal)


@every(LOOSE, at_least=400)
def test_what_is_read_loosely_says_as_what(row: Row) -> None:
    """Read by the grammar itself, or with a note whose one safe fix is the normal form."""
    notes = [report for report in reports_at(row.where, row.line) if report.name == "read-as"]
    for note in notes:
        (fix,) = note.fixes
        assert fix.safe
        ((_, text),) = fix.edits
        assert tree_of(row.where, text) == tree_of(row.where, row.normal)
        assert [report.name for report in reports_at(row.where, text) if report.name == "read-as"] == []
