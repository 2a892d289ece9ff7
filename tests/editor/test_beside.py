"""Figures behind the lines, and what stands above a heading."""

from __future__ import annotations

import subprocess
from pathlib import Path

from editor.client import client
from editor.houses import HOUSE, LOAF, house, write_house

from manchet.cli.editor import order_in_words
from manchet.editor.hints import hints
from manchet.editor.lenses import lenses
from manchet.editor.settings import Settings, settings_of

PATH = "breads/poolish.bake"
AS_SET = Settings()
TWICE = settings_of({"today": {"poolish loaf": "--pieces 40"}}, order_in_words)


def behind(path: str, settings: Settings = AS_SET, text: str = "") -> dict[str, str]:
    """What stands behind each line, by its first word."""
    files = {**HOUSE, path: text} if text else HOUSE
    bakery = house(files)
    rows = files[path].split("\n")
    found = {}
    for one in hints(bakery, path, 1, len(rows), settings):
        assert one.place.column == len(rows[one.place.line - 1]) + 1
        found[f"{one.place.line} {rows[one.place.line - 1].split()[0]}"] = one.text
    return found


def test_grams_stand_behind_per_cents() -> None:
    found = behind(PATH)
    assert found["6 white"] == "10563 g"
    assert (found["12 white"], found["8 salt"]) == ("3169 g", "211 g")
    assert behind(PATH, TWICE)["6 white"] == "21127 g"
    assert behind(PATH, Settings(hints=False)) == {}


def test_per_cents_stand_behind_grams() -> None:
    text = "formula A\n  makes 2 loaves at 840 g dough\n  dough\n    white flour 1000 g\n    water 650 g\n    salt 20 g\n    mix slow 4 min\n"
    assert behind("a.bake", text=text) == {"4 white": "100%", "5 water": "65%", "6 salt": "2%"}


def test_above_a_heading_stand_sheet_and_reports() -> None:
    bakery = house({"a.bake": LOAF.replace("    salt                   2%\n", "")})
    settings = settings_of({"today": {"Plain loaf": "--pieces 20"}}, order_in_words)
    assert [(one.text, one.does) for one in lenses(bakery, "a.bake", settings)] == [
        ("sheet of today · 20 loaves", "sheet"),
        ("1 warning", ""),
    ]


def test_an_editor_shows_and_does_them(tmp_path: Path) -> None:
    folder = write_house(tmp_path)
    for words in (
        ("init", "-q"),
        ("add", "."),
        ("-c", "user.name=a", "-c", "user.email=a@b.c", "commit", "-qm", "one"),
    ):
        subprocess.run(("git", *words), cwd=folder, check=True)
    (folder / "breads/plain.bake").write_text(LOAF.replace("70%", "72%"))
    with client(folder, settings={"today": {"Plain loaf": "--pieces 20"}}) as editor:
        editor.open("breads/plain.bake")
        document = {"textDocument": {"uri": editor.uri("breads/plain.bake")}}
        whole = {"start": {"line": 0, "character": 0}, "end": {"line": 99, "character": 0}}
        shown = editor.ask("textDocument/inlayHint", {**document, "range": whole})
        assert shown[0]["tooltip"] == "for 20 loaves today"
        sheet, compare = editor.ask("textDocument/codeLens", document)
        assert (sheet["command"]["title"], compare["command"]["title"]) == (
            "sheet of today · 20 loaves",
            "compare with last commit",
        )
        for lens in (sheet, compare):
            command = lens["command"]
            editor.ask("workspace/executeCommand", {"command": command["command"], "arguments": command["arguments"]})
        page = editor.told("window/showDocument")
        assert page["external"] and page["uri"].endswith("plain-loaf.sheet.html")
        assert "water 70 → 72 %" in editor.told("window/showMessage")["message"]
        for half in (LOAF[:40], "", LOAF[:300]):
            editor.type("breads/plain.bake", half)
            editor.ask("textDocument/inlayHint", {**document, "range": whole})
            editor.ask("textDocument/codeLens", document)
        assert [one for one in editor.asked if one["method"] == "window/logMessage"] == []
