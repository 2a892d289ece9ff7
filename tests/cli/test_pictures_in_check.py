"""`check` tells of a picture that cannot be shown as `build` does, and never from what it remembers."""

from __future__ import annotations

import re
import sys
from pathlib import Path

import pytest
from loaves import HOUSE_POOLISH, LOAF_OF_HOUSE_POOLISH, vary
from sheets.test_own_pictures import FORMULA, SVG

from manchet.cli.main import command

SOUND = FORMULA.replace("PICTURE", "cuts.svg")
BAD = SVG.replace(b"<path", b"<script/><path")
STAGE = f'{HOUSE_POOLISH}    picture "levain.svg"\n'


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    monkeypatch.delenv("MANCHET_CACHE", raising=False)
    folder = tmp_path / "bakery"
    folder.mkdir()
    (folder / "quay.bake").write_text(SOUND, encoding="utf-8")
    monkeypatch.chdir(folder)
    return folder


def picture_reports(capsys: pytest.CaptureFixture[str], *words: str) -> list[tuple[str, str]]:
    """The reports on pictures: at which line, which."""
    command(["check", "--format", "short", *words])
    return re.findall(r"^(\S+:\d+):\d+: warning: .*\[(picture-[a-z-]+)\]$", capsys.readouterr().out, re.MULTILINE)


def test_a_missing_one_is_told_at_its_line_and_as_build_tells_it(
    bakery: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    line = next(n for n, text in enumerate(FORMULA.splitlines(), 1) if "picture" in text)
    assert picture_reports(capsys) == [(f"quay.bake:{line}", "picture-missing")]
    command(["check"])
    told = capsys.readouterr().out
    command(["build", ".", "--only", "sheet,html"])
    built = capsys.readouterr().err
    assert told.partition("\n\n")[0] == built.partition("\n\n")[0]


def test_nothing_of_it_is_remembered(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert [name for _, name in picture_reports(capsys)] == ["picture-missing"]
    (bakery / "cuts.svg").write_bytes(SVG)
    assert picture_reports(capsys) == []
    (bakery / "cuts.svg").write_bytes(BAD)
    assert [name for _, name in picture_reports(capsys)] == ["picture-not-plain"]
    (bakery / "cuts.svg").unlink()
    assert (
        [name for _, name in picture_reports(capsys)]
        == [name for _, name in picture_reports(capsys)]
        == ["picture-missing"]
    )
    assert [name for _, name in picture_reports(capsys, "--no-cache")] == ["picture-missing"]


def test_it_fails_a_strict_check(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert command(["check", "--strict"]) == 1
    (bakery / "cuts.svg").write_bytes(SVG)
    assert command(["check", "--strict"]) == 0
    capsys.readouterr()


def test_it_is_told_of_with_a_swap_too(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert [name for _, name in picture_reports(capsys, "--swap", "fresh yeast for instant yeast")] == [
        "picture-missing"
    ]


def test_only_of_what_was_asked_for(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    other = FORMULA.replace("Quay loaf", "Pier loaf").replace("PICTURE", "none.svg")
    with (bakery / "quay.bake").open("a", encoding="utf-8") as file:
        file.write("\n" + other)
    (bakery / "third.bake").write_text(other.replace("Pier", "Mole"), encoding="utf-8")
    assert len(picture_reports(capsys)) == 3
    assert len(picture_reports(capsys, "quay.bake")) == 2
    ((place, _),) = picture_reports(capsys, "Pier loaf")
    assert int(place.partition(":")[2]) > len(FORMULA.splitlines())


def test_a_picture_of_a_stage_of_the_house_is_one_cause(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (bakery / "quay.bake").unlink()
    (bakery / "stages").mkdir()
    (bakery / "stages" / "levains.bake").write_text(STAGE, encoding="utf-8")
    for name in ("Pier loaf", "Mole loaf"):
        (bakery / f"{name[:4]}.bake").write_text(vary(LOAF_OF_HOUSE_POOLISH, formula=name), encoding="utf-8")
    assert picture_reports(capsys) == picture_reports(capsys) == [("stages/levains.bake:7", "picture-missing")]
    (bakery / "stages" / "levain.svg").write_bytes(SVG)
    assert picture_reports(capsys) == []


def test_without_a_picture_nothing_is_loaded_for_them(
    bakery: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    (bakery / "quay.bake").write_text(FORMULA.replace('      picture "PICTURE"\n', ""), encoding="utf-8")
    for module in ("manchet.workspace.pictures", "manchet.sheets.own_picture"):
        monkeypatch.setitem(sys.modules, module, None)  # to import it would be an error
    assert picture_reports(capsys) == []
