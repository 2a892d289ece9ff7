"""Every form can be made of every sound formula there is: of any school, from any book, with steps or without."""

from __future__ import annotations

from pathlib import Path

import pytest
from every import every

from manchet.cli.main import command

TESTS = Path(__file__).parents[1]
FILES = sorted([*(TESTS / "corpus" / "quiet").glob("*.bake"), *(TESTS / "reference" / "cases").glob("*/formula.bake")])


@every(FILES, at_least=130)
def test_it_is_printed(file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    bakery = tmp_path / file.parent.name / file.stem
    bakery.mkdir(parents=True)
    (bakery / "house.bake").write_text(file.read_text(encoding="utf-8"), encoding="utf-8")
    monkeypatch.chdir(bakery)
    assert command(["build", ".", "--only", "sheet,card,handout,html,json", "--jobs", "1"]) == 0
    made = {path.name.split(".", 1)[1] for path in (bakery / "output").iterdir()}
    assert made >= {f"{kind}.{form}" for kind in ("sheet", "card", "handout") for form in ("html", "json")}
