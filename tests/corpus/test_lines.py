"""Every row of `lines/lines.txt`: what is read means its normal form, and what is asked offers what to type."""

from __future__ import annotations

from pathlib import Path

import pytest
from corpus.lines.reading import WHERE, Row, errors_at, offered, parse_reports, reports_at, rows, tree_of
from diagnostics.fixing import after
from every import every
from loaves import PLAIN_LOAF, vary
from works import formula_of

from manchet.source.text import SourceText
from manchet.syntax import line
from manchet.syntax.loose import normal
from manchet.syntax.parser import parse

ROOT = Path(__file__).parents[2]

READ = [(row,) for row in rows() if row.normal]
ASKED = [(row,) for row in rows() if row.report]
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


@every(ASKED, at_least=250)
def test_a_line_is_answered_with_what_to_type(row: Row) -> None:
    answers = [offered(report) for report in reports_at(row.where, row.line) if report.name == row.report]
    assert any(row.words in answer for answer in answers), [
        f"{report.name}: {offered(report)}" for report in reports_at(row.where, row.line)
    ]


@every(ASKED, at_least=250)
def test_the_first_fix_of_an_answer_can_be_read(row: Row) -> None:
    """Carried out it leaves no line that cannot be read: what is then asked is something else, as how much of it there is."""
    for report in reports_at(row.where, row.line):
        for fix in report.fixes[:1] if report.name == row.report else ():
            left = {one.name for one in parse_reports(row.where, after(WHERE[row.where].format(row.line), fix))}
            assert not left, (fix.title, left)


def test_after_bake_a_warmth_is_the_core_and_covered_is_the_lid() -> None:
    loaf = vary(PLAIN_LOAF, bake="40 min covered at 230 C to 97 C")
    bake = next(step for step in formula_of(loaf).steps if step.verb == "bake")
    assert [reach.what for reach in bake.reaches] == ["core"] and bake.lid is True and "covered" not in bake.manner
    mix = next(step for step in formula_of(loaf).steps if step.verb == "mix")
    assert [reach.what for reach in mix.reaches] == ["temperature"]


def test_a_weighed_wrap_needs_no_place() -> None:
    assert reports_at("dough", "wrap in marzipan 90 g each") == []
    assert reports_at("dough", "wrap in cloth") == []
    wrapped = formula_of(PLAIN_LOAF.replace("    cool 2 h", "    wrap in marzipan 90 g each\n    cool 2 h"))
    (applied,) = (step.applied for step in wrapped.steps if step.applied is not None)
    assert (applied.name, applied.grams, applied.each) == ("marzipan", 90, True)


def test_no_sound_line_is_asked_for_a_loose_spelling(monkeypatch: pytest.MonkeyPatch) -> None:
    """What is written as the grammar has it costs nothing more, and is never second-guessed."""
    asked: list[str] = []

    def note(body: str, context: str) -> None:
        asked.append(body)

    monkeypatch.setattr(normal, "normal_form", note)
    line._read_short.cache_clear()
    files = [*(ROOT / "recipes").rglob("*.bake"), *(ROOT / "tests/corpus/quiet").glob("*.bake")]
    for path in files:
        parse(SourceText(path.name, path.read_text(encoding="utf-8")))
    line._read_short.cache_clear()
    assert len(files) > 60
    assert asked == []
