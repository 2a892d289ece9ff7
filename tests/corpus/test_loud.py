"""Every mistake of the loud corpus gives exactly one report, by its name, on its line."""

import re
from pathlib import Path

import pytest

from manchet.checks.registry import NAMES
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

CASES = sorted((Path(__file__).parent / "loud").glob("*.bake"))
EXPECT = re.compile(r"# expect: (?P<name>[a-z0-9-]+) on line (?P<line>\d+)")


def expected(case: Path) -> tuple[str, int]:
    first = EXPECT.match(case.read_text(encoding="utf-8"))
    assert first, f"{case.name} begins with no `# expect: NAME on line N`"
    return first["name"], int(first["line"])


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.stem)
def test_a_mistake_gives_exactly_its_report(case: Path) -> None:
    reports = read([SourceText(case.name, case.read_text(encoding="utf-8"))]).diagnostics
    assert [(r.name, r.place.line) for r in reports] == [expected(case)], [r.message for r in reports]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.stem)
def test_a_report_speaks_to_a_baker(case: Path) -> None:
    for report in read([SourceText(case.name, case.read_text(encoding="utf-8"))]).diagnostics:
        assert report.help, "a report says what to do"
        assert not report.message.endswith("."), report.message
        assert not re.search(r"\b(token|parse|parser|terminal|exception|None|Fraction)\b", report.message + report.help)
        assert report.place.text, "a report quotes its line"


def test_every_check_has_a_loud_case() -> None:
    shown = {expected(case)[0] for case in CASES}
    assert shown >= NAMES
    assert len(CASES) >= 60
