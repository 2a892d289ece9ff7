"""Every form can be made of every sound formula there is: of any school, from any book, with steps or without."""

from __future__ import annotations

from pathlib import Path

import pytest

from manchet.cli.main import command

TESTS = Path(__file__).parents[1]
FILES = sorted([*(TESTS / "corpus" / "quiet").glob("*.bake"), *(TESTS / "reference" / "cases").glob("*/formula.bake")])


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.stem if file.stem != "formula" else file.parent.name)
def test_it_is_printed(file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "house.bake").write_text(file.read_text(encoding="utf-8"), encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert command(["build", ".", "--only", "sheet,card,handout,html,json", "--jobs", "1"]) == 0
    made = {path.name.split(".", 1)[1] for path in (tmp_path / "output").iterdir()}
    assert made >= {f"{kind}.{form}" for kind in ("sheet", "card", "handout") for form in ("html", "json")}
