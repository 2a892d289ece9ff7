"""A tub of dough in the fridge."""

from datetime import datetime
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given, strategies as st
from run_length import FEW_EXAMPLES
from sheets.card_text import notes_of
from works import first_work

from manchet.batch.work import Work
from manchet.diagnostics.catalogue import explain
from manchet.figures.fermentation.chilling import STEP, Cooling, chilled_in, chilling_figures, cooling
from manchet.figures.fermentation.cooling import seconds_of_lag
from manchet.figures.fermentation.yeast_rate import BAKERS
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.card.card import card_of
from manchet.timing.when import When


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


@FEW_EXAMPLES
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
    """The example's loaves of 1 kg from 25 C in a fridge of 5 C: cold in three hours to seven."""
    case = explain("room-far-from-written")
    assert case is not None
    figure = chilling_figures(first_work(case.mistake))["dough, retard: cold after"]
    assert 3 <= figure.value <= 7 and figure.unit == "h"
    assert [(g.name, g.value) for g in figure.inputs] == [
        ("dough in one piece", 1000), ("as warm as", 25), ("the fridge", 5)
    ]  # fmt: skip


# ---- what is put into the fridge, and when -----------------------------------------------------------

COLD_LOAF = """
formula Cold loaf
  kind hearth loaf
  makes 20 loaves at 900 g dough
  makes 40 rolls at 90 g dough

  overall
    white flour          100%
    water                 68%
    salt                   2%
    fresh yeast            0.6%

  old dough with 10% of all flour
    white flour          100%
    water                 60%
    salt                   2%
    fresh yeast            0.5%
    mix by hand 5 min to 24 C
    ripen covered 14-18 h at 6 C

  dough
    old dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 1 h at 25 C
    retard covered 10-12 h at 5 C
    divide
    for the loaves
      shape round
      retard covered 12 h at 4 C
      bake 40 min at 230 C to 97 C core, steam
      cool 2 h
    for the rolls
      shape round
      prove covered 1 h at 26 C
      retard covered 8 h at 4 C
      bake 16 min at 230 C, steam
      cool 1 h
"""


def cold_loaf(text: str = COLD_LOAF) -> Work:
    return first_work(text)


def test_every_warm_dough_that_goes_into_the_fridge_and_how_large_it_is() -> None:
    """The old dough in its tub, the dough in its own, a roll; not the loaves, whose dough is cold already."""
    work = cold_loaf()
    batch, tub_of_dough = work.batch, work.batch.dough
    found = [(c.where, c.step.verb, c.grams, c.warmth, c.fridge) for c in chilled_in(work)]
    assert found == [
        ("old dough", "ripen", batch.stages[0].out, 24, 6),
        ("dough", "retard", tub_of_dough, 25, 5),
        ("rolls", "retard", 90, 26, 4),
    ]


def test_a_roll_is_cold_sooner_than_a_tub() -> None:
    figures = chilling_figures(cold_loaf())
    roll, tub = figures["rolls, retard: cold after"], figures["dough, retard: cold after"]
    assert 1 <= roll.value <= 3 < tub.value
    assert "estimate" in figures["dough, retard: works on as if for"].rule


def test_the_card_says_it_where_the_dough_goes_into_the_fridge() -> None:
    work = cold_loaf()
    when = When(datetime(2026, 11, 27, 17, 0), False)
    made = card_of(work, when)
    said = {(row.stage, row.branch, row.step.verb): row.cold_after for row in made.rows if row.step and row.cold_after}
    assert set(said) == {("old dough", "", "ripen"), ("", "", "retard"), ("", "rolls", "retard")}
    for cold in said.values():
        assert cold is not None and cold.low is not None and cold.high is not None
        assert 0 < cold.low < cold.high
    view = timing_card(work, when, Issue(), House())
    assert sum("cold through after about" in note for note in notes_of(view)) == 3
