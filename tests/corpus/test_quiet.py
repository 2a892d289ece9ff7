"""Sound formulas of every school give no report at all."""

from pathlib import Path

from every import every
from works import bakery_of

CASES = sorted((Path(__file__).parent / "quiet").glob("*.bake"))


@every(CASES, at_least=45)
def test_a_sound_formula_gives_no_report(case: Path) -> None:
    bakery = bakery_of(case.read_text(encoding="utf-8"))
    assert [f"line {r.place.line}: {r.name}: {r.message}" for r in bakery.diagnostics] == []
    assert bakery.formulas, "the file holds no formula: nothing was tested"
    assert not bakery.unsound


def test_every_case_says_what_it_shows() -> None:
    assert len(CASES) >= 35
    for case in CASES:
        assert case.read_text(encoding="utf-8").startswith("# "), case.name
