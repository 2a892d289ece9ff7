"""The model of warmth against published rates, a published letter and the trade's rule of thumb."""

from fractions import Fraction
from itertools import pairwise

import pytest
from every import every
from hypothesis import given, strategies as st

from manchet.figures.fermentation.yeast_rate import (
    BAKERS,
    SOUR_BACTERIA,
    SOUR_YEAST,
    Leaven,
    holds,
    longer,
    longer_by_thumb,
    pace,
)

LEAVENS = (BAKERS, SOUR_YEAST, SOUR_BACTERIA)


@every(
    [("5", 0.0050), ("10", 0.0496), ("15", 0.1274), ("20", 0.2198), ("24", 0.2903), ("27", 0.3331), ("30", 0.3609),
     ("32.27", 0.368), ("35", 0.3560), ("38", 0.3106), ("40", 0.2575)],
    at_least=11,
)  # fmt: skip
def test_rates_of_bakers_yeast_an_hour(celsius: str, rate: float) -> None:
    """Salvado et al., Appl. Environ. Microbiol. 77 (2011) 2292, by Rosso's equation; worked out apart from this code."""
    assert float(pace(BAKERS, Fraction(celsius)) * BAKERS.per_hour) == pytest.approx(rate, abs=0.0001)


@pytest.mark.parametrize(("warm", "cool", "times"), [(30, 20, 1.64), (25, 15, 2.40), (20, 10, 4.43)])
def test_no_single_factor_for_ten_degrees_fits(warm: int, cool: int, times: float) -> None:
    assert float(pace(BAKERS, Fraction(warm)) / pace(BAKERS, Fraction(cool))) == pytest.approx(times, abs=0.01)


@every(
    [(SOUR_YEAST, 28, 1), (SOUR_YEAST, 20, 0.5), (SOUR_YEAST, 32, 0.5), (SOUR_YEAST, 14, 0.25), (SOUR_YEAST, 34, 0.25),
     (SOUR_BACTERIA, 32, 1), (SOUR_BACTERIA, 33, 1), (SOUR_BACTERIA, 20, 0.5), (SOUR_BACTERIA, 15, 0.25),
     (SOUR_BACTERIA, 39, 0.25)],
    at_least=10,
)  # fmt: skip
def test_a_sour_by_letter(leaven: Leaven, celsius: int, share: float) -> None:
    """M. Gaenzle, letter in the sourdough FAQ (item 39): best, half and quarter rates; held to 30 % of the best."""
    assert float(pace(leaven, Fraction(celsius))) == pytest.approx(share, abs=0.3)


@every(
    [(SOUR_YEAST, 8), (SOUR_YEAST, 36), (SOUR_BACTERIA, 4), (SOUR_BACTERIA, 41), (BAKERS, 2),
     (BAKERS, 46), (BAKERS, 300), (BAKERS, -20)],
    at_least=8,
)  # fmt: skip
def test_nothing_works_outside_its_temperatures(leaven: Leaven, celsius: int) -> None:
    assert pace(leaven, Fraction(celsius)) == 0
    assert longer(leaven, Fraction(25), Fraction(celsius)) is None


@pytest.mark.parametrize("leaven", LEAVENS, ids=lambda leaven: leaven.name)
def test_its_best_is_the_best(leaven: Leaven) -> None:
    assert pace(leaven, leaven.best) == 1
    assert pace(leaven, leaven.least) == pace(leaven, leaven.most) == 0
    below = [pace(leaven, leaven.least + n * (leaven.best - leaven.least) / 40) for n in range(41)]
    above = [pace(leaven, leaven.best + n * (leaven.most - leaven.best) / 40) for n in range(41)]
    assert all(a < b for a, b in pairwise(below))
    assert all(a > b for a, b in pairwise(above))


degrees = st.integers(1400, 3600).map(lambda hundredths: Fraction(hundredths, 100))


@given(st.sampled_from(LEAVENS), degrees, degrees)
def test_there_and_back(leaven: Leaven, one: Fraction, other: Fraction) -> None:
    there, back = longer(leaven, one, other), longer(leaven, other, one)
    assert (there is None) == (back is None) == (not (holds(leaven, one) and holds(leaven, other)))
    assert there is None or back is None or there * back == 1


def test_thumb() -> None:
    """A tenth for each degree: 24 C for 26 C takes 1.21 times as long, and ten degrees 2.59 (Q10)."""
    assert longer_by_thumb(Fraction(26), Fraction(24)) == Fraction("1.21")
    assert float(longer_by_thumb(Fraction(30), Fraction(20))) == pytest.approx(2.59, abs=0.01)
    assert longer_by_thumb(Fraction(24), Fraction(26)) == 1 / Fraction("1.21")
    assert longer_by_thumb(Fraction(24), Fraction("24.5")) == 1 / Fraction("1.05")
