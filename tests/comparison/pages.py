"""A page with every sort of line on it."""

from __future__ import annotations

from comparison.breads import compared, edited
from comparison.every_change import EVERY_CHANGE
from comparison.test_twelve_edits import TWELVE

from manchet.sheets.comparison.page import (
    bread_on_one_side,
    compared_bread,
    comparison_page,
    html_of_comparison,
    unreadable_bread,
)
from manchet.sheets.page.house import House

SIDES = ("HEAD~2", "working copy")
HOUSE = House()


def comparison_of_many(house: House = HOUSE) -> str:
    """HTML."""
    pairs = [(bread, edited(bread, *edits)) for bread, edits, _ in TWELVE.values()]
    pairs += [(before, after) for before, after, _ in EVERY_CHANGE.values()]
    breads = [compared_bread(compared(*pair), SIDES, house) for pair in pairs]
    breads.append(bread_on_one_side("<Gone> & loaf", SIDES, False, house))
    breads.append(
        unreadable_bread("Half a loaf", SIDES, SIDES[1], "half.bake:3: the flours of overall come to 90%", house)
    )
    return html_of_comparison(comparison_page(breads, 3, house))
