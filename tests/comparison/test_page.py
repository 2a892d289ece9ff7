"""The page of a comparison: one column in the sheets' type, what it was small beside the figure, and no colour that says good or bad."""

from __future__ import annotations

import re

from comparison.breads import EIDER, compared, edited
from comparison.pages import SIDES, comparison_of_many

from manchet.sheets.comparison.page import compared_bread
from manchet.sheets.page.house import House


def test_what_it_was_stands_small_beside_the_figure() -> None:
    html = comparison_of_many()
    assert "<li>salt <b>1.9\N{NO-BREAK SPACE}%</b> <small>was 2.1\N{NO-BREAK SPACE}%</small>" in html
    assert '<li class="grave">now contains MILK (from butter)</li>' in html


def test_no_colour_and_nothing_from_elsewhere() -> None:
    html = comparison_of_many()
    assert set(re.findall(r"#[0-9a-fA-F]{3,6}\b", html)) <= {"#000", "#fff"}
    assert re.search(r"\b(red|green)\b", html) is None
    assert re.search(r"(?:src|href)=|https?://|<script", html) is None


def test_hostile_names_stay_text() -> None:
    html = comparison_of_many()
    assert "&lt;Gone&gt; &amp; loaf" in html and "<Gone>" not in html


def test_the_same_each_time() -> None:
    assert comparison_of_many() == comparison_of_many()


def test_in_the_houses_own_units_and_words() -> None:
    """A house of pounds and Fahrenheit reads its changes so, and proofs where another proves."""
    american = House(paper="Letter", units="US", degrees="F", words="American")
    after = edited(EIDER, ("prove 50-70 min at 28 C", "prove 60-80 min at 26 C"), ("76%", "78%"))
    lines = [line.text for line in compared_bread(compared(EIDER, after), SIDES, american).lines]
    said = "\n".join(lines).replace("\N{NO-BREAK SPACE}", " ")
    assert "dough: proof 50–70 min, at 82 °F → 60–80 min, at 79 °F" in said
    assert re.search(r"water 76 → 78 %: \d+ lb [^→]+ → \d+ lb .+ today", said)
