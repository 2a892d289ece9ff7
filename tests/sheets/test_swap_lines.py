"""A swap is said on every form alike: its factor, whose it is, and what else moved."""

from __future__ import annotations

import json
from datetime import datetime

import pytest
from sheets.test_handout import QUAY

from manchet.source.text import SourceText
from manchet.timing.when import When
from manchet.workspace.bakery import read
from manchet.workspace.changes import Changes
from manchet.workspace.file_versions import Version
from manchet.workspace.press import Press
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import render_formula

VARIANT = "\n  variant dried yeast\n    swap fresh yeast for instant yeast\n"
SAID = "instant yeast for fresh yeast: × 0.33 (Hamelman, Bread, 2004), water +0.67 %"
OPTIONS = PrintOptions(
    kinds=("sheet", "card", "handout"), formats=("html", "json"), when=When(datetime(2026, 11, 28, 7, 0), True)
)  # fmt: skip


def forms(text: str, swap: str = "") -> dict[str, str]:
    """Every form of the file's last formula, as a build writes them."""
    bakery = read([SourceText("quay.bake", text)], changes=Changes((swap,)) if swap else None)
    files = render_formula(bakery, bakery.formulas[-1], OPTIONS, Version("quay.bake", "9b1e"), Press()).files
    return {name: content.decode().replace("\N{NO-BREAK SPACE}", " ") for name, content in files.items()}


@pytest.mark.parametrize(("text", "swap"), [(QUAY + VARIANT, ""), (QUAY, "fresh yeast for instant yeast")])
@pytest.mark.parametrize("kind", ["sheet", "card", "handout"])
def test_every_form_says_what_was_swapped(text: str, swap: str, kind: str) -> None:
    found = forms(text, swap)
    assert json.loads(found[f"{kind}.json"])["swapped"] == [SAID]
    assert found[f"{kind}.html"].count(SAID) == 1


@pytest.mark.parametrize("kind", ["sheet", "card", "handout"])
def test_nothing_is_said_where_nothing_was_swapped(kind: str) -> None:
    found = forms(QUAY)
    assert json.loads(found[f"{kind}.json"])["swapped"] == []
    assert "made up" not in found[f"{kind}.html"]


def test_a_levain_for_yeast_is_said_in_words_and_not_in_factors() -> None:
    into = json.loads(forms(QUAY, "fresh yeast for ripe wheat starter with 20% of all flour")["sheet.json"])["swapped"][
        0
    ]
    assert into.startswith("ripe wheat starter for fresh yeast: 20 % of the flour is in the ripe wheat starter; ")
    assert "×" not in into and "−" not in into
