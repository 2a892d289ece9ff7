"""Sizes: exact in every step, whatever way it is asked for."""

from __future__ import annotations

from fractions import Fraction

from benchmarks.generate import in_overall, recipe
from hypothesis import given, strategies as st
from reference.reading import bakery_of

from manchet.batch.batching import batch_of
from manchet.batch.model import Batch
from manchet.batch.order import Order
from manchet.batch.pieces import PieceWeights
from manchet.batch.sizing import size_batch
from manchet.formula.model import Formula
from manchet.kitchen.model import PLAIN

FACTORS = st.fractions(min_value=Fraction(1, 100), max_value=100, max_denominator=1000)
RANDOMS = st.randoms(use_true_random=False)


def grams(batch: Batch) -> list[Fraction]:
    return [weighed.grams for stage in batch.stages for weighed in stage.weighed]


def flour_of(formula: Formula) -> Fraction:
    flour = PieceWeights(formula).written_flour().value
    assert isinstance(flour, Fraction)
    return flour


@given(random=RANDOMS, a=FACTORS, b=FACTORS)
def test_resizing_twice_is_resizing_once(random: object, a: Fraction, b: Fraction) -> None:
    (formula,) = bakery_of(in_overall(recipe(random, 1))).formulas  # type: ignore[arg-type]
    flour = flour_of(formula)
    once = batch_of(formula, flour * a * b, PLAIN)
    by_a = batch_of(formula, flour * a, PLAIN)
    assert grams(once) == [weight * b for weight in grams(by_a)]
    assert once.dough == by_a.dough * b


@given(random=RANDOMS, pieces=st.integers(1, 500))
def test_pieces_dough_flour_and_one_ingredient_ask_for_the_same(random: object, pieces: int) -> None:
    (formula,) = bakery_of(in_overall(recipe(random, 1))).formulas  # type: ignore[arg-type]
    by_pieces = size_batch(formula, Order(pieces=((Fraction(pieces), ""),)), PLAIN).value
    assert by_pieces is not None
    salt = next(line for line in formula.overall if line.name == "salt")
    for order in (
        Order(dough=by_pieces.dough),
        Order(flour=by_pieces.flour),
        Order(have=("salt", salt.share * by_pieces.flour)),
    ):
        again = size_batch(formula, order, PLAIN).value
        assert again is not None
        assert grams(again) == grams(by_pieces)
        assert again.pieces == by_pieces.pieces
