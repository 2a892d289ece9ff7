"""Every mistake of the loud corpus gives exactly one report, by its name, on its line.

They are further ways to a report that has a case of its own, which stands beside the code that makes it.
"""

import re
from pathlib import Path

from every import every
from works import reports_of

from manchet.diagnostics.catalogue import explain, names

CASES = sorted((Path(__file__).parent / "loud").glob("*.bake"))
EXPECT = re.compile(r"# expect: (?P<name>[a-z0-9-]+) on line (?P<line>\d+)")


def expected_report(case: Path) -> tuple[str, int]:
    first = EXPECT.match(case.read_text(encoding="utf-8"))
    assert first, f"{case.name} begins with no `# expect: NAME on line N`"
    return first["name"], int(first["line"])


@every(CASES, at_least=50)
def test_a_mistake_gives_exactly_its_report(case: Path) -> None:
    reports = reports_of(case.read_text(encoding="utf-8"))
    assert [(r.name, r.place.line) for r in reports] == [expected_report(case)], [r.message for r in reports]


OF_REPORTS = {name: case.mistake for name in names() if (case := explain(name)) and case.mistake}
TEXTS = OF_REPORTS | {case.stem: case.read_text(encoding="utf-8") for case in CASES}


@every(TEXTS.items(), at_least=280)
def test_a_report_speaks_to_a_baker(name: str, text: str) -> None:
    for report in reports_of(text):
        assert report.help, "a report says what to do"
        assert not report.message.endswith("."), report.message
        assert not re.search(r"\b(token|parse|parser|terminal|exception|None|Fraction)\b", report.message + report.help)
        assert report.place.text, "a report quotes its line"


def test_a_case_here_is_another_way_to_its_report() -> None:
    assert len(CASES) >= 50
    assert {case.stem for case in CASES}.isdisjoint(names()), (
        "the case of a report stands beside the code that makes it"
    )
