"""What an editor is told as one types is what `check` says of the same files."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from editor.client import client
from editor.houses import HOUSE, LOAF, write_house

from manchet.editor.reports import reports_on
from manchet.workspace.checking import check_selection
from manchet.workspace.folder import premises_of
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.selection import selections

DEMO = Path(__file__).parents[2] / "recipes"
NO_SALT = LOAF.replace("    salt                   2%\n", "")


def test_a_file_is_told_what_check_says(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(DEMO)
    (selection,) = selections(["."])
    checked = check_selection(selection, use_cache=False).diagnostics
    bakery = OpenBakery(premises_of("."))
    for file in bakery.files:
        said = sorted(one for one in checked if one.place.path == file.path)
        assert sorted(reports_on(bakery, file.path)) == said


def test_reports_come_as_they_are_typed(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        assert editor.open("breads/plain.bake") == []
        (report,) = editor.type("breads/plain.bake", NO_SALT)
        assert report["code"] == "salt-missing"
        assert report["source"] == "manchet"
        assert report["severity"] == 2
        assert report["range"] == {"start": {"line": 0, "character": 0}, "end": {"line": 0, "character": 18}}
        assert "allow salt-missing" in report["message"] or "salt" in report["message"]
        address = report["codeDescription"]["href"]
        assert address.startswith("file://") and address.endswith("salt-missing.bake")
        assert editor.type("breads/plain.bake", LOAF) == []


def test_fixes_come_with_their_report(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        (report,) = editor.open("breads/plain.bake", LOAF.replace("ferment covered 2 h", "ferment covered 2 hours"))
        (fix,) = report["data"]["fixes"]
        assert fix["safe"]
        (edit,) = fix["edits"]
        assert edit["newText"] in ("h", "2 h")


def test_a_larder_that_is_not_saved_counts(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        loaf = HOUSE["breads/plain.bake"].replace("white flour ", "mill flour  ")
        (report,) = editor.open("breads/plain.bake", loaf)
        assert report["code"] == "unknown-ingredient"
        editor.open("larder.bake")
        editor.type("larder.bake", HOUSE["larder.bake"] + "\n  mill flour\n    class         wheat flour\n")
        assert editor.reports_like("breads/plain.bake", []) == []
        editor.notify("textDocument/didClose", {"textDocument": {"uri": editor.uri("larder.bake")}})
        assert editor.reports_like("breads/plain.bake", ["unknown-ingredient"])


def test_a_file_that_was_never_saved_is_a_bakery_by_itself() -> None:
    with client(None) as editor:
        (report,) = editor.open("Untitled-1", NO_SALT)
        assert report["code"] == "salt-missing"


def test_the_rest_of_the_folder_is_told_too(tmp_path: Path) -> None:
    folder = write_house(tmp_path, {**HOUSE, "breads/other.bake": NO_SALT.replace("Plain", "Other")})
    with client(folder) as editor:
        editor.open("breads/plain.bake")
        editor.reports_like("breads/other.bake", ["salt-missing"])
        (folder / "breads/other.bake").write_text(LOAF.replace("Plain", "Other"))
        changed = {"changes": [{"uri": editor.uri("breads/other.bake"), "type": 2}]}
        editor.notify("workspace/didChangeWatchedFiles", changed)
        editor.reports_like("breads/other.bake", [])


def test_a_shared_file_that_is_saved_has_the_folder_looked_at_again(tmp_path: Path) -> None:
    folder = write_house(tmp_path)
    with client(folder) as editor:
        editor.open("larder.bake")
        without = HOUSE["larder.bake"].replace("  ripe pot", "  old pot")
        editor.type("larder.bake", without)
        (folder / "larder.bake").write_text(without)
        editor.notify("textDocument/didSave", {"textDocument": {"uri": editor.uri("larder.bake")}})
        editor.reports_like("sours.bake", ["unknown-ingredient"])


def test_only_the_newest_of_many_strokes_is_told(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake")
        for number in range(40):
            editor.type("breads/plain.bake", LOAF + f"# {number}\n", wait=False)
        (report,) = editor.type("breads/plain.bake", NO_SALT)
        assert report["code"] == "salt-missing"
        assert not [one for one in editor.asked if one["method"].startswith("window/")]


def test_a_folder_that_is_gone_ends_nothing(tmp_path: Path) -> None:
    folder = write_house(tmp_path / "house")
    with client(folder) as editor:
        editor.open("breads/plain.bake")
        shutil.rmtree(folder)
        editor.notify("textDocument/didSave", {"textDocument": {"uri": editor.uri("breads/plain.bake")}})
        (report,) = editor.type("breads/plain.bake", NO_SALT)
        assert report["code"] == "salt-missing"
