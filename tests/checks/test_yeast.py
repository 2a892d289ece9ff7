"""Yeasts brought to one, and the pace of yeast at a temperature."""

from fractions import Fraction

import pytest
from manchet.checks.yeast import fresh_equivalent, pace
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


@pytest.mark.parametrize(
    ("celsius", "rate"),
    [("5", 0.0050), ("10", 0.0496), ("15", 0.1274), ("20", 0.2198), ("24", 0.2903), ("30", 0.3609), ("35", 0.3560),
     ("40", 0.2575)],
)  # fmt: skip
def test_the_pace_follows_the_cardinal_model(celsius: str, rate: float) -> None:
    """Rates an hour of Salvado et al., Appl. Environ. Microbiol. 77 (2011) 2292, computed by Rosso's equation."""
    at_27 = 0.3331
    assert float(pace(Fraction(celsius))) == pytest.approx(rate / at_27, abs=0.002)


def test_outside_the_cardinal_temperatures_nothing_works() -> None:
    assert pace(Fraction(2)) == 0
    assert pace(Fraction(46)) == 0
    assert pace(Fraction(27)) == 1
