"""Splitting the dough over the mixer."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given, strategies as st
from weighing.kneading import BUTTER, FLOUR, WATER, batch, stage, step, weighed

from manchet.batch.mixes import mixes_of
from manchet.batch.model import StageBatch
from manchet.kitchen.model import PLAIN, Mixer

SPIRAL = Mixer("spiral", Fraction(6000), Fraction(45000))
SMALL = Mixer("planetary", Fraction(1000), Fraction(5000))
KITCHEN = PLAIN._replace(mixers=(SPIRAL,))


def dough_of(grams: int, mixing: str = "mix") -> StageBatch:
    return stage("dough", [weighed(FLOUR, grams)], [step(mixing, 5, by_hand=mixing == "stir")])


def test_a_dough_that_fits_is_one_mix() -> None:
    mixes = mixes_of(batch(dough_of(45000)), KITCHEN)
    assert (mixes.number, mixes.grams, mixes.mixer, mixes.under) == (1, 45000, SPIRAL, None)


def test_a_gram_too_much_makes_two_mixes() -> None:
    mixes = mixes_of(batch(dough_of(45001)), KITCHEN)
    assert (mixes.number, mixes.grams) == (2, Fraction(45001, 2))


def test_less_than_the_mixer_needs_is_said() -> None:
    assert mixes_of(batch(dough_of(5500)), KITCHEN).under == 500


def test_a_stiff_dough_makes_more_mixes() -> None:
    """At 55 % water three fifths of the load (Metcalfe, manuals of their mixers), in between in proportion."""
    dough = batch(dough_of(45000))
    assert [mixes_of(dough, KITCHEN, Fraction(wet, 1000)).number for wet in (600, 599, 550, 400)] == [1, 2, 2, 2]
    stiff = mixes_of(dough, KITCHEN, Fraction(55, 100))
    assert stiff.is_stiff and stiff.most == 27000
    assert not mixes_of(dough, KITCHEN, Fraction(65, 100)).is_stiff


def test_what_the_kitchen_says_of_stiff_doughs_counts() -> None:
    measured = PLAIN._replace(mixers=(SPIRAL._replace(stiff_grams=Fraction(40000)),))
    assert mixes_of(batch(dough_of(40000)), measured, Fraction(50, 100)).number == 1
    assert mixes_of(batch(dough_of(40001)), measured, Fraction(50, 100)).number == 2


def test_nothing_is_split_without_a_machine() -> None:
    by_hand = mixes_of(batch(dough_of(90000, "stir")), KITCHEN)
    assert (by_hand.number, by_hand.mixer) == (1, None)
    assert mixes_of(batch(dough_of(90000)), PLAIN).number == 1


def test_the_mixer_that_suits_is_taken() -> None:
    both = PLAIN._replace(mixers=(SPIRAL, SMALL))
    assert mixes_of(batch(dough_of(3000)), both).mixer == SMALL
    assert mixes_of(batch(dough_of(8000)), both).mixer == SPIRAL


def test_a_step_that_names_its_mixer_is_obeyed() -> None:
    dough = stage("dough", [weighed(FLOUR, 8000)], [step("mix", 5, where=("in", "planetary"))])
    mixes = mixes_of(batch(dough), PLAIN._replace(mixers=(SPIRAL, SMALL)))
    assert (mixes.mixer, mixes.number) == (SMALL, 2)


def test_a_stage_made_once_is_portioned_and_one_for_each_mix_is_made_again() -> None:
    levain = stage("sour", [weighed(FLOUR, 3000), weighed(WATER, 2400)])
    oats = stage("oats", [weighed(WATER, 900)], for_each_mix=True)
    dough = stage("dough", [weighed("sour", 5400), weighed("oats", 900), weighed(FLOUR, 90000)], [step("mix", 5)])
    mixes = mixes_of(batch(levain, oats, dough), KITCHEN)
    sour, soaker, main = mixes.makings
    assert mixes.number == 3
    assert (sour.times, sour.into, sour.for_each_mix) == (1, 5400, 1800)
    assert (soaker.times, soaker.into, soaker.for_each_mix) == (3, 300, 300)
    assert (main.times, main.into) == (3, 32100)
    assert [w.grams for w in main.weighed] == [1800, 300, 30000]


def test_butter_that_is_locked_in_never_sees_the_bowl() -> None:
    dough = stage(
        "dough",
        [weighed(FLOUR, 40000), weighed("butter block", 10000, held=True)],
        [step("mix", 5), step("lock in", add=["butter block"])],
    )
    mixes = mixes_of(batch(stage("butter block", [weighed(BUTTER, 10000)]), dough), KITCHEN)
    assert (mixes.number, mixes.grams) == (1, 40000)


@given(st.fractions(min_value=Fraction(1, 7), max_value=10**6), st.integers(1, 10**5))
def test_mixes_are_equal_exact_and_as_few_as_fit(total: Fraction, most: int) -> None:
    dough = stage("dough", [weighed(FLOUR, total)], [step("mix", 5)])
    mixes = mixes_of(batch(dough), PLAIN._replace(mixers=(Mixer("m", None, Fraction(most)),)))
    assert mixes.grams * mixes.number == total
    assert mixes.grams <= most
    assert mixes.number == 1 or total > most * (mixes.number - 1)
    assert sum(w.grams for w in mixes.makings[-1].weighed) * mixes.number == total
