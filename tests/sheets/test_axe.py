"""Every form on a screen as someone has it who does not see it, or not well, or has no mouse: looked over by the rules of axe-core."""

from __future__ import annotations

from collections.abc import Iterator
from shutil import which
from typing import Any

import pytest
from axe_playwright_python.base import AXE_SCRIPT
from comparison.pages import comparison_of_many
from playwright.sync_api import sync_playwright
from run_length import IS_LONG, turn_of
from sheets.each_form import pages_of

from manchet.sheets.form import Form
from manchet.sheets.registry import FORMS, html_of

CHROMIUM = which("chromium") or which("google-chrome")
WIDTHS = {"phone": 390, "tablet": 820, "desk": 1280}

NOT_ASKED = {
    "p-as-heading": "takes a step that is one bold verb for a heading",
}
"""Rules that axe itself keeps off as experimental, and why this one stays so."""

RUN = """async notAsked => {
    document.querySelectorAll('details').forEach(folded => folded.open = true);
    const rules = axe.getRules().filter(rule => !rule.tags.includes('deprecated'));
    const each = rules.map(rule => [rule.ruleId, {enabled: !notAsked.includes(rule.ruleId)}]);
    const found = await axe.run(document, {rules: Object.fromEntries(each), resultTypes: ['violations']});
    const said = found.violations.flatMap(v => v.nodes.map(node => v.id + ': ' + node.html.slice(0, 200)));
    return {said, asked: found.violations.length + found.passes.length};
}"""
"""All rules on, whatever is folded unfolded; each finding with the element it is about."""


PAINTED = "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))"
"""Colours are looked at on what the page has painted; on a busy machine that comes after its text."""


@pytest.fixture(scope="module")
def screen() -> Iterator[Any]:
    assert CHROMIUM is not None, "no Chromium on this machine: `bash .ci/setup test` installs one"
    with sync_playwright() as play:
        chromium = started(play.chromium)
        yield chromium
        chromium.close()


def started(chromium: Any) -> Any:
    return chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox", "--disable-gpu"])


def looked_over(screen: Any, html: str, width: int) -> list[str]:
    # A sheet lets no script of others run, so axe's neither, but for the last word of this line.
    page = screen.new_page(viewport={"width": width, "height": 900}, bypass_csp=True)
    page.set_content(html)
    page.evaluate(PAINTED)
    page.evaluate(AXE_SCRIPT)
    found = page.evaluate(RUN, list(NOT_ASKED))
    page.close()
    assert found["asked"] > 10
    return list(found["said"])


def tried(form: Form, width: int) -> list[str]:
    """The page with most to go wrong; in the long run the others too, each at one width in turn."""
    first, *others = sorted((html_of(view) for view in pages_of(form)), key=len, reverse=True)
    return [first, *turn_of(width, WIDTHS.values(), others)] if IS_LONG else [first]


@pytest.mark.parametrize("width", WIDTHS.values(), ids=WIDTHS)
@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.name)
def test_axe_finds_nothing(form: Form, width: int, screen: Any) -> None:
    findings = {said for html in tried(form, width) for said in looked_over(screen, html, width)}
    assert findings == set()


def test_axe_finds_what_is_wrong(screen: Any) -> None:
    """Not contrast, of which a Chromium on a busy machine now and then cannot tell."""
    plain = "<!doctype html><title>A</title><h1>A</h1><ul><li>one</li></ul><p>two <a href='#b'>three</a></p>"
    odd = looked_over(screen, f"{plain}<p><img role='img'></p>", 390)
    assert {said.split(":")[0] for said in odd} >= {"html-has-lang", "image-alt", "region"}


@pytest.mark.parametrize("width", WIDTHS.values(), ids=WIDTHS)
def test_axe_finds_nothing_on_a_comparison(width: int, screen: Any) -> None:
    assert looked_over(screen, comparison_of_many(), width) == []
