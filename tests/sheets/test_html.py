"""The page in a real browser: nothing overflows on a phone, a tablet or A4, and nothing is asked for."""

from __future__ import annotations

import html
import re
from base64 import b64encode
from collections.abc import Iterator
from hashlib import sha256
from typing import Any

import pytest
from sheets import samples, samples_card, test_oven_card as oven_card

from manchet.sheets.registry import html_of

VIEWS = {
    "sheet": samples.ebb_rye(),
    "card": samples_card.night_card(),
    "oven card": oven_card.card(),
    "long name": samples.ebb_rye("Twice-sieved-overnight-soured-and-slowly-baked rye of the old ferry house " * 2),
    "one word": samples.ebb_rye("Roggenvollkornschrotsauerteigkastenbrotmitsonnenblumenkernenundkürbiskernen"),
}
WIDTHS = {"phone": 375, "tablet": 768, "A4": 794}


@pytest.fixture(scope="module")
def browser() -> Iterator[Any]:
    from shutil import which

    from playwright.sync_api import sync_playwright

    path = which("chromium") or which("chromium-browser") or which("google-chrome")
    if path is None:
        pytest.skip("no Chromium on this machine")
    with sync_playwright() as play:
        chromium = play.chromium.launch(executable_path=path, args=["--no-sandbox", "--disable-gpu"])
        yield chromium
        chromium.close()


@pytest.mark.parametrize("width", WIDTHS.values(), ids=WIDTHS.keys())
@pytest.mark.parametrize("view", VIEWS.values(), ids=VIEWS.keys())
def test_nothing_overflows_and_nothing_is_asked_for(browser: Any, view: Any, width: int, tmp_path: Any) -> None:
    page_file = tmp_path / "page.html"
    page_file.write_text(html_of(view), encoding="utf-8")
    page = browser.new_page(viewport={"width": width, "height": 900})
    asked: list[str] = []
    complaints: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.on("console", lambda message: complaints.append(message.text))
    page.goto(page_file.as_uri())
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    over = page.evaluate(
        """width => [...document.querySelectorAll('body *')]
            .filter(e => !e.closest('.picture') && e.getBoundingClientRect().right > width + 0.5)
            .map(e => e.className + ': ' + e.textContent.trim().slice(0, 40))""",
        width,
    )
    page.close()
    assert over == []
    assert asked == [page_file.as_uri()]
    assert complaints == []


@pytest.mark.parametrize("width", [390, 820, 1280])
def test_the_strip_keeps_its_size_and_is_reached_by_the_keyboard(browser: Any, width: int, tmp_path: Any) -> None:
    page_file = tmp_path / "page.html"
    page_file.write_text(html_of(samples_card.night_card()), encoding="utf-8")
    page = browser.new_page(viewport={"width": width, "height": 900})
    page.goto(page_file.as_uri())
    drawn = page.evaluate("document.querySelector('.strip svg').getBoundingClientRect().width")
    assert drawn == pytest.approx(188 / 25.4 * 96, abs=2)
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.className") == "strip picture"
    for _ in range(3):
        page.keyboard.press("ArrowRight")
    page.wait_for_timeout(300)
    moved = page.evaluate("document.activeElement.scrollLeft")
    assert (moved > 0) == (width < drawn)
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    assert page.evaluate("document.activeElement.type + document.activeElement.checked") == "checkboxtrue"
    page.close()


def test_the_page_forbids_itself_everything() -> None:
    page = html_of(samples.ebb_rye())
    assert "default-src 'none'" in page
    assert "http://" not in page.replace("http://www.w3.org/2000/svg", "") and "https://" not in page
    assert "<script" not in html_of(samples_card.night_card())


def test_a_page_runs_its_own_script_and_no_other() -> None:
    """Allowed by its sum: what a file says is never run, and the sum is that of what stands in the page."""
    page = html_of(samples.ebb_rye())
    (script,) = re.findall(r"<script>(.*?)</script>", page, re.DOTALL)
    allowed = "sha256-" + b64encode(sha256(script.encode()).digest()).decode()
    assert f"script-src '{allowed}'" in html.unescape(page)
