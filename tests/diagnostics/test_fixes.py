"""A fix is data that heals: carried out, its report is gone and none has come."""

from __future__ import annotations

from pathlib import Path

from diagnostics.fixing import after, said
from every import every
from works import reports_of

from manchet.diagnostics.catalogue import explain, names
from manchet.diagnostics.names import REPORTS
from manchet.source.text import SourceText
from manchet.syntax.sameness import reads_same

CASES = {name: case.mistake for name in names() if (case := explain(name)) is not None and case.mistake}
"""The mistake of every report that a text can show, by its name."""
LOUD = {
    file.stem: file.read_text(encoding="utf-8") for file in (Path(__file__).parents[1] / "corpus/loud").glob("*.bake")
}
MENDABLE = {name: text for name, text in sorted((CASES | LOUD).items()) if any(one.fixes for one in reports_of(text))}
WITHOUT = {
    "by-feel-amount": "how much salt a pinch is, is the baker's to say",
    "fraction-by-zero": "no figure follows from the one that is there",
    "line-outside-stage": "no stage stands above the line of this case; beside one it has a fix",
    "name-missing": "the name is the baker's to say",
    "number-too-long": "no figure follows from the one that is there",
    "packet": "what one weighs stands on it",
    "place-without-thing": "which tin, tray or cloth is the baker's to say",
    "touching-nothing": "what it is dusted or brushed with is the baker's to say",
    "touching-without-weight": "how much goes on a piece is the baker's to say",
    "why-allowed": "the reason is the baker's to say",
}
"""Mistakes in writing a line that no machine can put right, and why."""


def test_four_fifths_of_the_mistakes_in_writing_a_line_carry_a_fix() -> None:
    written = {name for name in CASES if REPORTS[name][1] == "syntax/reports"}
    assert written - MENDABLE.keys() == WITHOUT.keys()
    assert len(written) >= 49 and len(WITHOUT) <= len(written) // 5


NOW_SEEN = {"unknown-allow": "allow-unused"}
"""What a fix brings to light that was hidden behind the mistake: the remark allowed by this name is not there in the case."""

SLIPS = [
    ("unknown-ingredient", "watter", "watter"),
    ("unknown-kind", "country loaf", "hearth lof"),
    ("unknown-noun", "for the rolls", "for the rolls"),
    ("unknown-status", "aproved", "aproved"),
    ("unknown-tin", "10 loaves in long tin", "10 loaves in longg tin"),
    ("unknown-word", "knead 8 min", "mixx slow 8 min"),
    ("unknown-unit", "2 hx", "2 hrous"),
    ("unknown-allow", "salt-hihg", "salt-hihg"),
    ("neither-stage-nor-step", "    porridge", "    divied"),
    ("allergen-unknown", "weat", "weat"),
    ("class-unknown", "wheet flour", "wheet flour"),
    ("composition-unknown", "watr", "watr"),
    ("choice-unknown", "moon fat", "larrd"),
    ("part-unknown", "moon flour", "spellt flour"),
    ("kitchen-word-unknown", "Swiss", "metrik"),
    ("place-misspelt", "lonng tin", "lonng tin"),
    ("without-what", "diastatic malt", "fresh yaest"),
    ("swap-not-there", "active dry yeast", "active dry yeast"),
    ("swap-unknown", "for milk", "for milk"),
]
"""Names that nothing is called, each a slip of one that is there: its report, and how its case is written otherwise."""


@every(SLIPS, at_least=19)
def test_every_slip_of_a_name_carries_a_fix(name: str, written: str, slip: str) -> None:
    assert written in CASES[name]
    text = CASES[name].replace(written, slip)
    if name == "unknown-tin":
        text += "\nkitchen House\n  tin long tin\n    volume 1900 ml\n"
    (report,) = reports_of(text)
    assert report.name == name and report.fixes, report
    left = {one.name for one in reports_of(after(text, report.fixes[0]))}
    assert name not in left


@every(MENDABLE.items(), at_least=94)
def test_the_first_fix_leaves_no_report(name: str, text: str) -> None:
    (report,) = reports_of(text)
    left = reports_of(after(text, report.fixes[0]))
    assert said(tuple(one for one in left if one.name != NOW_SEEN.get(report.name))) == []


@every(MENDABLE.items(), at_least=94)
def test_each_choice_takes_its_own_report_away(name: str, text: str) -> None:
    (report,) = reports_of(text)
    for fix in report.fixes:
        left = reports_of(after(text, fix))
        assert report.name not in {one.name for one in left}, (fix.title, said(left))


@every(MENDABLE.items(), at_least=94)
def test_a_fix_is_told_as_what_to_type(name: str, text: str) -> None:
    (report,) = reports_of(text)
    titles = [fix.title for fix in report.fixes]
    assert len(set(titles)) == len(titles)
    for fix in report.fixes:
        assert fix.edits and fix.title[0].islower() and not fix.title.endswith("."), fix.title
        assert not (fix.safe and len(report.fixes) > 1), "two readings are never safe"


SAFE = {name: text for name, text in MENDABLE.items() if any(fix.safe for one in reports_of(text) for fix in one.fixes)}


@every(SAFE.items(), at_least=6)
def test_what_reads_after_a_safe_fix_is_what_was_read(name: str, text: str) -> None:
    (report,) = reports_of(text)
    assert reads_same(SourceText("test.bake", text), SourceText("test.bake", after(text, report.fixes[0])))


def test_a_fix_that_is_not_safe_need_not_read_the_same() -> None:
    """So the test above can fail."""
    (report,) = reports_of(CASES["range-as-amount"])
    text = CASES["range-as-amount"]
    assert not reads_same(SourceText("test.bake", text), SourceText("test.bake", after(text, report.fixes[0])))
