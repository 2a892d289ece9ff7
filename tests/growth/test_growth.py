"""Twice the size is twice the work, whatever there is twice as much of."""

from __future__ import annotations

from benchmarks.growing import FAMILIES
from every import every
from growth.work_done import calls, growth, look_over

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
    "ingredients": 20,
    "long lists": 100,
    "unknown parts": 10,
    "steps": 40,
    "branches": 12,
    "formulas": 20,
    "formulas of one file": 20,
    "reports": 40,
    "unread lines": 60,
    "empty headings": 200,
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


def test_every_family_is_counted() -> None:
    assert set(SIZES) == set(FAMILIES)


def test_the_names_of_a_larder_are_taken_apart_once_however_many_parts_are_unknown() -> None:
    """The first is compared with names that are taken apart for it, the second with the same."""
    family = FAMILIES["unknown parts"]
    look_over(family, 1)
    none, one, two = (calls(lambda size=size: look_over(family, size)) for size in (0, 1, 2))  # type: ignore[misc]
    assert two - one < 0.6 * (one - none)
