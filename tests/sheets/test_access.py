"""For whoever listens to a page: heads in their order, lists for what is done, cells with their heads, and the same in the PDF."""

from __future__ import annotations

import io
import re
from collections import Counter
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader
from pypdf.generic import IndirectObject
from sheets.each_form import METRIC, demo
from sheets.test_sides import all_ahead, at_home, render

from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.view import View
from manchet.sheets.registry import form_called, html_of

FORMS = ("handout", "class", "preparations", "house")


def view_of(form: str) -> View:
    formula = next(formula for formula in demo().formulas if formula.name == "Hawser knots")
    whats: dict[str, object] = {"house": demo().kitchens[0], "preparations": all_ahead(demo().kitchens[0])}
    return render(form, whats.get(form) or at_home(demo(), formula, METRIC), METRIC)


class Outline(HTMLParser):
    """The heads of a page, its heading cells, and what its cells say of their heads."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.levels: list[int] = []
        self.tags: Counter[str] = Counter()
        self.unscoped: list[str] = []
        self.ids: Counter[str] = Counter()
        self.named: list[str] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        said = dict(attrs)
        self.tags[tag] += 1
        if re.fullmatch(r"h[1-6]", tag):
            self.levels.append(int(tag[1]))
        if tag == "th" and said.get("scope") not in ("row", "col", "rowgroup", "colgroup"):
            self.unscoped.append(str(said))
        if said.get("id"):
            self.ids[str(said["id"])] += 1
        for name in ("headers", "aria-labelledby"):
            self.named += (said.get(name) or "").split()


@pytest.mark.parametrize("form", FORMS)
def test_heads_lists_and_cells(form: str) -> None:
    found = Outline(html_of(view_of(form)))
    assert found.levels[0] == 1 and found.levels.count(1) == 1
    assert all(level - before <= 1 for before, level in zip(found.levels, found.levels[1:], strict=False)), found.levels
    assert found.unscoped == [] and found.tags["main"] == 1 and found.tags["header"] >= 1
    assert [name for name, number in found.ids.items() if number > 1] == []
    assert set(found.named) <= set(found.ids)
    if form != "class":
        assert found.tags["ol"] >= 1 and found.tags["li"] >= 5
    if form != "house":
        assert found.tags["table"] >= 1 and found.tags["th"] >= 5


def roles(form: str) -> Counter[str]:
    """The structure elements of the PDF, by their type."""
    made = pdf_of(html_of(view_of(form)), form_called(form).layouts)
    assert isinstance(made, Pdf)
    reader = PdfReader(io.BytesIO(made.content))
    root: Any = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] and root["/Lang"] == "en-GB"
    found: Counter[str] = Counter()
    waiting = [root["/StructTreeRoot"]]
    while waiting:
        item = waiting.pop()
        item = item.get_object() if isinstance(item, IndirectObject) else item
        if isinstance(item, list):
            waiting += item
        elif isinstance(item, dict):
            if "/S" in item:
                found[str(item["/S"])] += 1
            if "/K" in item:
                waiting.append(item["/K"])
    return found


@pytest.mark.parametrize("form", FORMS)
def test_the_tree_of_the_pdf_says_the_same(form: str) -> None:
    found, page = roles(form), Outline(html_of(view_of(form)))
    assert found["/H1"] == page.levels.count(1) and found["/H2"] == page.levels.count(2)
    assert found["/LI"] == page.tags["li"] and found["/L"] == page.tags["ol"] + page.tags["ul"]
    assert found["/Table"] == page.tags["table"] and found["/TH"] == page.tags["th"]


@pytest.mark.parametrize("form", FORMS)
def test_nothing_overflows_on_a_screen(form: str, tmp_path: Path) -> None:
    from shutil import which

    from playwright.sync_api import sync_playwright

    path = which("chromium") or which("google-chrome")
    if path is None:
        pytest.skip("no Chromium on this machine")
    (tmp_path / "page.html").write_text(html_of(view_of(form)), encoding="utf-8")
    wide = {}
    with sync_playwright() as play:
        chromium = play.chromium.launch(executable_path=path, args=["--no-sandbox", "--disable-gpu"])
        for width in (390, 820, 1280):
            page = chromium.new_page(viewport={"width": width, "height": 900})
            page.goto((tmp_path / "page.html").as_uri())
            wide[width] = page.evaluate("document.documentElement.scrollWidth")
        chromium.close()
    assert {width: there for width, there in wide.items() if there > width} == {}
