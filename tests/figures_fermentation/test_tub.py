"""A tub of dough in the fridge."""

from fractions import Fraction
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given, settings, strategies as st

from manchet.bakery import read, written_batch
from manchet.figures.tub import STEP, Cooling, cooling, seconds_of_lag, tub_figures
from manchet.figures.yeast_rate import BAKERS
from manchet.formula.mixes import mixes_of
from manchet.source.text import SourceText


def tub(grams: int, start: int = 25, fridge: int = 4) -> Cooling:
    return cooling(Fraction(grams), Fraction(start), Fraction(fridge))


def hours(seconds: Fraction | None) -> float:
    assert seconds is not None
    return float(seconds / 3600)


def test_lag_of_a_kilogram_cube() -> None:
    """By hand: 1 kg is a cube of 97 mm, half 0.0485 m; 3080 kJ/m3 K x 0.0485 / 3 x (1/5 + 0.405 x 0.0485 / 0.4)."""
    assert float(seconds_of_lag(Fraction(1000), Fraction(5))) == pytest.approx(
        3_080_000 * 0.0485 / 3 * (0.2 + 0.405 * 0.0485 / 0.4), rel=0.01
    )


def test_a_loaf_is_cold_in_hours_and_a_big_tub_takes_the_night() -> None:
    """Common practice: loaves in baskets two to four hours, a tub of 10 kg most of a night."""
    soon, late = tub(600).seconds_to(Fraction(8)) or (None, None)
    assert 1.5 < hours(soon) < hours(late) < 5
    soon, late = tub(10_000).seconds_to(Fraction(8)) or (None, None)
    assert 7 < hours(soon) < hours(late) < 18


def test_what_the_yeast_still_does_while_it_cools() -> None:
    least, most = tub(10_000).work(BAKERS, Fraction(12 * 3600))
    assert 3 < hours(least) < hours(most) < 7
    nothing = tub(10_000, start=4).work(BAKERS, Fraction(0))
    assert nothing == (0, 0)


def test_never_colder_than_the_fridge() -> None:
    assert tub(500).seconds_to(Fraction(3)) is None


@settings(max_examples=20)
@given(st.integers(200, 20_000), st.integers(10, 30), st.integers(1, 8))
def test_it_cools_steadily_and_a_bigger_one_slower(grams: int, start: int, fridge: int) -> None:
    small, big = tub(grams, start, fridge), tub(grams * 2, start, fridge)
    for curve in (*small, *big):
        assert curve[0] == start
        assert all(fridge <= later <= sooner for sooner, later in pairwise(curve))
    assert all(a <= b for a, b in zip(small.fast, big.fast, strict=True))
    assert all(a <= b for a, b in zip(small.fast, small.slow, strict=True))
    assert STEP == 600


def test_how_soon_a_retarded_loaf_is_cold() -> None:
    """The loud example's loaves of 1 kg from 25 C in a fridge of 5 C: cold in three hours to seven."""
    loud = Path(__file__).parents[1] / "corpus" / "loud" / "room-far-from-written.bake"
    bakery = read([SourceText("test.bake", loud.read_text(encoding="utf-8"))])
    formula, kitchen = bakery.formulas[0], bakery.kitchen
    batch = written_batch(formula, kitchen).value
    assert batch is not None
    figure = tub_figures(batch, mixes_of(batch, kitchen))["dough, retard: cold after"]
    assert 3 <= figure.value <= 7 and figure.unit == "h"
    assert [(g.name, g.value) for g in figure.inputs] == [
        ("dough in one piece", 1000), ("as warm as", 25), ("the fridge", 5)
    ]  # fmt: skip
