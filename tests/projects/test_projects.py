"""Whole small bakeries, and what the command says of them, kept as text for a person to look over.

A project is a folder of `.bake` files with a `project.toml` that lists what is shown: a file under `expected/`, and the
words after `manchet` that write it.
"""

from __future__ import annotations

import shutil
import tomllib
from collections.abc import Callable
from pathlib import Path

import pytest

from manchet.cli.main import command

PROJECTS = sorted(folder.parent for folder in Path(__file__).parent.glob("*/project.toml"))
SHOWN = [
    pytest.param(project, name, words, id=f"{project.name}/{name}")
    for project in PROJECTS
    for name, words in tomllib.loads((project / "project.toml").read_text(encoding="utf-8"))["show"].items()
]


@pytest.mark.parametrize(("project", "name", "words"), SHOWN)
def test_what_is_shown(
    project: Path,
    name: str,
    words: list[str],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    golden: Callable[[Path, str], None],
) -> None:
    for file in project.glob("*.bake"):
        shutil.copy(file, tmp_path)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("MANCHET_CACHE", "off")
    status = command(words)
    said = capsys.readouterr()
    assert status == 0, said.out + said.err
    golden(project / "expected" / name, said.out + said.err)


def test_every_expectation_is_shown() -> None:
    kept = {f"{file.parent.parent.name}/{file.name}" for file in Path(__file__).parent.glob("*/expected/*")}
    assert kept == {param.id for param in SHOWN}
