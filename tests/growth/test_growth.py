"""Twice the size is twice the work, whatever there is twice as much of."""

from __future__ import annotations

from benchmarks.growing import FAMILIES
from every import every
from growth.work_done import growth

AT_MOST = 2.3
"""How much more work twice the size may be: twice, and a little for what is sorted."""

SIZES = {
    "loads": 6,
    "mixes": 6,
    "mixes and loads": 8,
    "folds": 20,
    "stage chain": 6,
    "stages abreast": 6,
    "ovens": 50,
    "preparations": 12,
    "variants": 10,
    "unknown names": 20,
    "steps": 40,
    "branches": 12,
    "formulas": 20,
    "formulas of one file": 20,
    "reports": 40,
    "unread lines": 60,
    "one name": 20,
    "house stages": 100,
    "kitchens": 100,
    "blends": 100,
    "deep lines": 200,
}
"""Of each family the least of three sizes, each twice the one before."""


@every(SIZES.items(), at_least=10)
def test_the_work_grows_no_faster_than_what_is_asked(name: str, smallest: int) -> None:
    assert growth(FAMILIES[name], smallest) <= AT_MOST
