"""Each sort of change by itself, as it is told; and taken back, the same seen from the other side."""

from __future__ import annotations

import pytest
from comparison.breads import lines, work_of_text
from comparison.every_change import EVERY_CHANGE
from comparison.test_both_ways import both_ways
from every import every


@pytest.mark.parametrize("title", EVERY_CHANGE)
def test_what_is_told_of_it(title: str) -> None:
    before, after, told = EVERY_CHANGE[title]
    assert lines(before, after, everything=True) == told


@every([(title, before, after) for title, (before, after, _) in EVERY_CHANGE.items()], at_least=30)
def test_taken_back(title: str, before: str, after: str) -> None:
    both_ways(work_of_text(before), work_of_text(after))
