"""The demo bakery on paper: no page holds the foot of a sheet alone, and pictures take no page of their own."""

from __future__ import annotations

from pathlib import Path

import pytest
from sheets.paper import LaidPage, laid_out

from manchet.cli.main import command
from manchet.sheets.page.words import words_of

BREADS = Path(__file__).parents[2] / "recipes" / "breads"
DRAWN = ("copper-wreath", "hawser-knots", "lamplight-tin", "night-loaf", "regatta-plait", "tern-loaf")
"""Those with most to draw, and those that filled their last page."""


def pages(folder: Path, *more: str) -> dict[str, list[LaidPage]]:
    files = [str(file) for file in sorted(BREADS.parent.rglob("*.bake")) if file.stem in DRAWN]
    assert command(["build", *files, "--only", "sheet,html", "--jobs", "1", "--out", str(folder), *more]) == 0
    sheets = {file.name: laid_out(file.read_text(encoding="utf-8")) for file in sorted(folder.glob("*.sheet.html"))}
    assert len(sheets) == len(DRAWN)
    return sheets


@pytest.fixture(scope="module")
def drawn_pages(tmp_path_factory: pytest.TempPathFactory) -> dict[str, list[LaidPage]]:
    return pages(tmp_path_factory.mktemp("drawn"))


def test_no_foot_stands_alone(drawn_pages: dict[str, list[LaidPage]]) -> None:
    verbs = tuple(verb for verb in words_of("British").table["verbs"].values() if verb)
    for name, laid in drawn_pages.items():
        assert any(line.startswith(verbs) for line in laid[-1].lines), f"{name}: nothing is done on its last page"


def test_pictures_take_no_page_of_their_own(drawn_pages: dict[str, list[LaidPage]], tmp_path: Path) -> None:
    plain = pages(tmp_path, "--no-pictures")
    assert {name: len(laid) for name, laid in drawn_pages.items()} == {name: len(laid) for name, laid in plain.items()}
