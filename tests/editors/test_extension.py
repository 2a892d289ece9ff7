"""The extension for VS Code, built as continuous integration builds it: what is in it, and that it is whole."""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path
from typing import Any
from zipfile import ZipFile

import pytest

ROOT = Path(__file__).parents[2]
SOURCES = ROOT / "grammar" / "editors"


@pytest.fixture(scope="module")
def extension() -> ZipFile:
    done = subprocess.run(
        ["bash", str(ROOT / ".ci" / "extension")], capture_output=True, text=True, timeout=600, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return ZipFile(ROOT / done.stdout.splitlines()[-1])


def read(extension: ZipFile, name: str) -> Any:
    return json.loads(extension.read(f"extension/{name}"))


def test_all_that_it_names_is_in_it(extension: ZipFile) -> None:
    package = read(extension, "package.json")
    (language,), (grammar,) = (package["contributes"][what] for what in ("languages", "grammars"))
    inside = set(extension.namelist())
    for name in (package["main"], language["configuration"], grammar["path"]):
        assert f"extension/{name.removeprefix('./')}" in inside
    assert not any("node_modules" in name or "/src/" in name for name in inside)
    assert grammar["scopeName"] == read(extension, grammar["path"].removeprefix("./"))["scopeName"]


def test_its_colours_are_those_of_the_project(extension: ZipFile) -> None:
    assert read(extension, "out/bake.tmLanguage.json") == json.loads(
        (SOURCES / "bake.tmLanguage.json").read_text("utf-8")
    )


def test_the_client_is_a_program_with_all_that_it_needs(extension: ZipFile, tmp_path: Path) -> None:
    """Started by Node with no more than the editor gives: its two doors are there."""
    (tmp_path / "client.js").write_bytes(extension.read("extension/out/client.js"))
    (tmp_path / "node_modules" / "vscode").mkdir(parents=True)
    anything = (
        "module.exports = new Proxy(function () {}, { get: () => module.exports, construct: () => module.exports })"
    )
    (tmp_path / "node_modules" / "vscode" / "index.js").write_text(anything, encoding="utf-8")
    asked = "const c = require('./client.js'); console.log(typeof c.activate, typeof c.deactivate)"
    done = subprocess.run(["node", "-e", asked], cwd=tmp_path, capture_output=True, text=True, timeout=60, check=False)
    assert done.stdout.strip() == "function function", done.stderr


def test_a_line_is_indented_after_what_holds_lines(extension: ZipFile) -> None:
    rules = read(extension, "language.json")["indentationRules"]
    deeper = re.compile(rules["increaseIndentPattern"])
    assert all(deeper.search(line) for line in ("formula Tern loaf", "kitchen Weir Street", "  dough", "  poolish 20%"))
    assert not any(
        deeper.search(line) for line in ("  kind hearth loaf", "    water  68%", "  dough loss 1%", "# formula")
    )
    headings = json.loads((SOURCES / "bake.tmLanguage.json").read_text("utf-8"))["repository"]
    for rule in ("block", "stage"):
        words = re.search(r"\((?:\?:)?([a-z |]+)\)", headings[rule]["match"].removeprefix("^(?:  )?"))
        assert words is not None
        missing = [word for word in words[1].split("|") if not deeper.search(f"{'  ' * (rule == 'stage')}{word} ")]
        assert missing == []
