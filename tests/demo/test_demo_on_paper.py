"""The demo bakery on paper: no page holds the foot of a sheet alone, and pictures take no page of their own."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from manchet.cli.main import command
from manchet.sheets.page.words import words_of

BREADS = Path(__file__).parents[2] / "recipes" / "breads"
DRAWN = ("copper-wreath", "hawser-knots", "lamplight-tin", "night-loaf", "regatta-plait", "tern-loaf")
"""Those with most to draw, and those that filled their last page."""


def pages(folder: Path, *more: str) -> dict[str, list[str]]:
    files = [str(file) for file in sorted(BREADS.parent.rglob("*.bake")) if file.stem in DRAWN]
    assert command(["build", *files, "--only", "sheet,pdf", "--out", str(folder), *more]) == 0
    return {
        file.name: [page.extract_text() for page in PdfReader(file).pages]
        for file in sorted(folder.glob("*.sheet.pdf"))
    }


@pytest.fixture(scope="module")
def drawn(tmp_path_factory: pytest.TempPathFactory) -> dict[str, list[str]]:
    return pages(tmp_path_factory.mktemp("drawn"))


def test_no_foot_stands_alone(drawn: dict[str, list[str]]) -> None:
    verbs = tuple(verb for verb in words_of("British").table["verbs"].values() if verb)
    for name, texts in drawn.items():
        assert any(line.startswith(verbs) for line in texts[-1].splitlines()), (
            f"{name}: nothing is done on its last page"
        )


def test_pictures_take_no_page_of_their_own(drawn: dict[str, list[str]], tmp_path: Path) -> None:
    plain = pages(tmp_path, "--no-pictures")
    assert {name: len(texts) for name, texts in drawn.items()} == {name: len(texts) for name, texts in plain.items()}
