"""Yeasts brought to one."""

from fractions import Fraction

import pytest

from manchet.figures.fermentation.fresh_yeast import fresh_equivalent
from manchet.larder.book import builtin
from manchet.larder.ingredient import Ingredient


def yeast(name: str) -> Ingredient:
    found = builtin().find(name)
    assert isinstance(found, Ingredient)
    return found


@pytest.mark.parametrize(
    ("name", "fresh"),
    [("fresh yeast", "1"), ("active dry yeast", "2.5"), ("instant yeast", "3.03"), ("sweet-dough yeast", "3.03"),
     ("fresh sweet-dough yeast", "1")],
)  # fmt: skip
def test_a_gram_in_fresh_yeast(name: str, fresh: str) -> None:
    """fresh : active dry : instant = 1 : 0.4 : 0.33 (Hamelman, Bread, 2004)."""
    assert round(float(fresh_equivalent(yeast(name), Fraction(1))), 2) == float(fresh)
