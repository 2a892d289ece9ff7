"""Every example that a baker is shown compiles: those of the language page and of the front page."""

from __future__ import annotations

from pathlib import Path

import pytest
from reference_page.examples import Example, examples_of, whole

from manchet.bakery import read
from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.text import short
from manchet.source.text import SourceText

ROOT = Path(__file__).parents[2]
PAGES = ("grammar/reference.md", "README.md")
EXAMPLES = [
    pytest.param(example, id=f"{page}:{example.line}")
    for page in PAGES
    for example in examples_of(ROOT / page)
    if example.kind != "wrong"
]


@pytest.mark.parametrize("example", EXAMPLES)
def test_every_example_compiles(example: Example) -> None:
    """A whole file without any report; a piece of one, put into a plain bread it was not made for, without an error."""
    text = whole(example)
    bakery = read((SourceText("example.bake", text),))
    a_piece = example.kind != ""
    reports = [short(d) for d in bakery.diagnostics if d.severity is Severity.ERROR or not a_piece]
    assert not reports, "\n".join([*reports, text])


def test_the_language_page_has_an_example_of_every_kind() -> None:
    kinds = {example.kind for example in examples_of(ROOT / PAGES[0])}
    assert kinds >= {"", "in head", "in formula", "in dough", "in weights", "wrong"}


def test_links_within_the_language_page_lead_somewhere() -> None:
    import re

    text = (ROOT / PAGES[0]).read_text(encoding="utf-8")
    headings = {
        re.sub(r"[^a-z0-9 -]", "", line.lstrip("# ").lower()).replace(" ", "-")
        for line in text.splitlines()
        if line.startswith("## ")
    }
    assert set(re.findall(r"\]\(#([a-z-]+)\)", text)) == headings
