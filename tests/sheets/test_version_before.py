"""What a sheet says of the version and the sheet before it, and of signs that it cannot print."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest
from loaves import PLAIN_LOAF, vary

from manchet.cli.main import command

TEXT = vary(PLAIN_LOAF, formula="Pier roll", kind="rolls", makes="10 rolls at 80 g dough", water="62%", salt="1.8%")


def git(folder: Path, *words: str) -> None:
    who = ("-c", "user.name=Ines", "-c", "user.email=ines@example.org")
    subprocess.run(["git", "-C", str(folder), *who, *words], check=True, capture_output=True)


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "pier-roll.bake").write_text(TEXT, encoding="utf-8")
    git(tmp_path, "init", "-q")
    git(tmp_path, "add", ".")
    git(tmp_path, "commit", "-qm", "first")
    return tmp_path


def sheet(folder: Path, forms: str = "json") -> Any:
    assert command(["build", "--only", f"sheet,{forms}"]) == 0
    return json.loads((folder / "output" / "pier-roll.sheet.json").read_text(encoding="utf-8"))


def was(data: Any) -> dict[str, str]:
    return {line["name"]: line["was"].replace("\N{NO-BREAK SPACE}", " ") for line in data["overall"] if line["was"]}


def test_what_changed_since_the_last_commit_says_what_it_was(bakery: Path) -> None:
    assert was(sheet(bakery)) == {}
    file = bakery / "pier-roll.bake"
    file.write_text(TEXT.replace("1.8%", "2.1%"), encoding="utf-8")
    assert was(sheet(bakery)) == {"salt": "was 1.8 %"}
    git(bakery, "commit", "-qam", "more salt")
    assert was(sheet(bakery)) == {"salt": "was 1.8 %"}
    file.write_text(TEXT.replace("1.8%", "2.1%").replace("62%", "64%"), encoding="utf-8")
    assert was(sheet(bakery)) == {"water": "was 62 %"}


def rows(data: Any) -> dict[str, str]:
    marked = [row for block in data["blocks"] for row in (*block["rows"], *block["aside"]) if row["was"]]
    return {row["name"]: row["was"].replace("\N{NO-BREAK SPACE}", " ") for row in marked}


def test_what_changed_stands_at_its_weight_in_its_unit(bakery: Path) -> None:
    """Ten rolls of 80 g: 488 g of flour, of which 1.8 % is 8.8 g; what stands in two rows is said at the foot alone."""
    file = bakery / "pier-roll.bake"
    file.write_text(TEXT.replace("1.8%", "2.1%"), encoding="utf-8")
    (said,) = rows(sheet(bakery)).items()
    assert said[0] == "salt" and said[1].startswith("was 8.") and said[1].endswith(" g")
    file.write_text(TEXT.replace("    salt ", "    nigella 1%\n    salt "), encoding="utf-8")
    assert rows(sheet(bakery)) == {"nigella": "new"}
    git(bakery, "commit", "-qam", "nigella")
    file.write_text(TEXT, encoding="utf-8")
    data = sheet(bakery)
    assert [(gone["name"], gone["was"].replace("\N{NO-BREAK SPACE}", " ")) for gone in data["blocks"][-1]["gone"]] == [
        ("nigella", "1 %")
    ]


def test_an_old_text_that_is_no_formula_says_nothing(bakery: Path) -> None:
    file = bakery / "pier-roll.bake"
    file.write_text("formula Pier roll\n  overall\n", encoding="utf-8")
    git(bakery, "commit", "-qam", "broken")
    file.write_text(TEXT, encoding="utf-8")
    assert was(sheet(bakery)) == {}


def test_a_new_sheet_names_the_day_of_the_one_it_replaces_and_stays_so(bakery: Path) -> None:
    first = sheet(bakery)["running"]
    assert first["replaces"] == "" and sheet(bakery)["running"] == first
    path = bakery / "output" / "pier-roll.sheet.json"
    path.write_text(path.read_text(encoding="utf-8").replace(first["date"], "Sat 14 Nov 2026"), encoding="utf-8")
    second = sheet(bakery)["running"]
    assert second["replaces"] == "Sat 14 Nov 2026"
    assert sheet(bakery)["running"] == second


@pytest.mark.parametrize("lies", ["", "[]", '{"running": {"date": 5}}', '{"running": {"date": "' + "x" * 99 + '"}}'])
def test_a_file_that_is_not_ours_is_passed_over(bakery: Path, lies: str) -> None:
    folder = bakery / "output"
    folder.mkdir()
    (folder / "pier-roll.sheet.json").write_text(lies, encoding="utf-8")
    assert sheet(bakery)["running"]["replaces"] == ""


def test_a_sign_without_a_letter_is_warned_of_with_its_place(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (bakery / "pier-roll.bake").write_text(TEXT.replace("  kind", '  note "for ☃ days"\n  kind'), encoding="utf-8")
    sheet(bakery, "pdf,json")
    said = "".join(capsys.readouterr())
    assert (
        "warning: the sheet of Pier roll cannot print “☃” (snowman, U+2603), in “for ☃ days” [sign-not-in-font]" in said
    )
