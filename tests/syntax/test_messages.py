"""What a baker reads when a line is wrong: no name of a token, something to do, and every report explained."""

from __future__ import annotations

import random
import re
from pathlib import Path

from every import every
from run_length import at_length
from works import bakery_of, reports_of

from manchet.diagnostics.names import REPORTS
from manchet.diagnostics.suggest import distance, fold, nearest
from manchet.source.text import SourceText
from manchet.syntax import tables
from manchet.syntax.mistakes.faults import REMARKS
from manchet.syntax.mistakes.lookalikes import TWINS
from manchet.syntax.mistakes.messages import MESSAGES
from manchet.syntax.parser import MOST_REPORTS, parse
from manchet.syntax.vocabulary import VERBS

ROOT = Path(__file__).parent.parent.parent
LINES = [
    row.strip()
    for path in sorted(ROOT.glob("recipes/**/*.bake"))
    for row in path.read_text(encoding="utf-8").split("\n")
    if row.strip() and not row.startswith("#")
]
TERMINALS = {symbol for row in tables.load().rows for symbol in row if re.fullmatch(r"_?[A-Z][A-Z_]{2,}", symbol)}


def test_every_report_is_explained() -> None:
    assert {name for name, (_, folder) in REPORTS.items() if folder == "syntax/reports"} == set(MESSAGES)


def test_no_token_name_leaks_from_spoilt_lines() -> None:
    rng = random.Random(7)
    for _ in range(at_length(1000, 200)):
        words = rng.choice(LINES).split(" ")
        for _ in range(rng.randint(1, 3)):
            at = rng.randrange(len(words) + 1)
            words[at : at + rng.randint(0, 1)] = rng.choice(
                (["of"], ["12"], ["5", "C"], [","], [], ["with"], ["2%"], ['"x'])
            )
        body = " ".join(words)
        for head in ("formula A\n  dough\n    ", "formula A\n  ", "kitchen K\n  ", "larder L\n  a\n    ", ""):
            for report in parse(SourceText("x", f"{head}{body}\n")).diagnostics:
                said = re.sub(r"`[^`]*`", "", f"{report.message} {report.help}")
                assert not TERMINALS & set(re.findall(r"\w+", said)), (body, said)
                assert report.message and report.help, (body, report)
                assert "{" not in said and "Stuck" not in said


@every(sorted(TWINS), at_least=70)
def test_twins_are_answered_and_not_read(word: str) -> None:
    read = bakery_of(f"formula A\n  dough\n    {word}\n")
    reports = [r for r in read.diagnostics if r.place.line == 3]
    assert len(reports) == 1, [r.message for r in reports]
    assert reports[0].name in ("unknown-word", "overnight", "by-feel-amount")


def test_a_stage_may_be_called_by_a_twin_of_a_word() -> None:
    text = "formula A\n  sour mother\n    medium rye flour 200 g\n    water 200 g\n  dough\n    mother\n    salt 4 g\n"
    assert all(r.place.line != 6 for r in reports_of(text))


def test_an_ordinal_is_part_of_a_name() -> None:
    stages = "  sour {0}\n    medium rye flour 200 g\n    water 200 g\n    ripen 8 h at 25 C\n"
    for name in ("1st build", "2nd build", "23rd build", "build 4th"):
        for use in (name, f"all of the {name}", f"{name} 300 g"):
            text = f"formula A\n{stages.format(name)}  dough\n    white flour 800 g\n    {use}\n    salt 4 g\n"
            assert [r.message for r in reports_of(text) if r.name in ("unknown-unit", "unknown-ingredient")] == [], use


def test_what_is_read_is_told_once() -> None:
    """The message has what it is read as, and the help does not say it again."""
    told = [
        report
        for line in ("  mix slow for 8 min", "  ripen 2 h", "percentages of dough flour")
        for report in reports_of(f"formula A\n  dough\n    white flour 800 g\n  {line}\n")
        if report.name in ("read-as", "old-spelling", "ripen-or-ferment")
    ]
    assert len(told) == 3
    for report in told:
        (fix,) = report.fixes
        (edit,) = fix.edits
        assert edit.text in report.message and edit.text not in report.help


def test_remarks_are_the_messages_that_are_no_errors() -> None:
    as_read = {"no-break-space", "odd-dash", "unit-long-form", "old-spelling", "ripen-or-ferment", "read-as"}
    assert as_read | {"reserved-word", "too-many-mistakes"} == REMARKS


def test_independent_mistakes_are_reported_each_once_at_its_line() -> None:
    bad = [
        "white flour 74-78%",
        "salt 18, to taste",
        "syrup about 5%",
        "knead 8 min",
        "bake 45 min at 220 to 230 C",
        "oil 1,500 kg",
    ]
    text = "formula A\n  dough\n" + "".join(f"    {row}\n    water 5%\n" for row in bad)
    reports = parse(SourceText("x", text)).diagnostics
    assert [r.place.line for r in reports] == [3, 5, 7, 9, 11, 13]
    assert [r.name for r in reports] == [
        "range-as-amount", "missing-unit", "about-amount", "unknown-word", "to-as-range", "decimal-comma",
    ]  # fmt: skip


def test_many_mistakes_are_counted() -> None:
    text = "formula A\n  dough\n" + "    knead 8 min\n" * 90
    reports = parse(SourceText("x", text)).diagnostics
    assert len(reports) == MOST_REPORTS + 1
    assert reports[-1].message == f"{90 - MOST_REPORTS} more lines of this file cannot be read"


def test_an_unreadable_heading_opens_its_block() -> None:
    text = "formula A\n  levain sour with lots of flour\n    medium rye flour 100%\n    water 80%\n"
    out = parse(SourceText("x", text))
    assert len(out.diagnostics) == 1
    heading = out.value.entries[0].children[0]
    assert heading.node.name.text == "sour"  # type: ignore[union-attr]
    assert len(heading.children) == 2


def test_no_two_verbs_are_a_letter_apart() -> None:
    verbs = sorted(verb.word for verb in VERBS)  # and not the other English, which is read and not ours
    near = [(a, b) for a in verbs for b in verbs if a < b and distance(a, b, 1) <= 1]
    assert near == []


def test_names_are_compared_without_case_and_composed() -> None:
    assert fold("  Pâte  fermentée ") == fold("PA\u0302TE FERMENTE\u0301E")
    assert nearest("devide", ["divide", "dust"]) == "divide"
    assert nearest("sour", ["second build", "ripe sour"]) == "ripe sour"
    assert nearest("xyzzy", ["divide"]) is None
