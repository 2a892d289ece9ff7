"""What touches the bread goes with how much is made: `in all` in proportion, `each` with the pieces."""

from __future__ import annotations

from fractions import Fraction

import pytest
from loaves import LOAVES_AND_ROLLS
from works import first_work, formula_of

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.pieces import PieceWeights

TEXT = LOAVES_AND_ROLLS
for _step, _touching in (
    ("    divide\n", "    dust with rice flour 100 g in all\n"),
    ("      bake 40 min", "      grease trays with butter 20 g in all\n"),
    ("      bake 16 min", "      brush with milk 2 g each\n      grease trays with butter 24 g in all\n"),
):
    TEXT = TEXT.replace(_step, _touching + _step)


def touching(order: Order) -> list[Fraction]:
    batch = first_work(TEXT, order).batch
    ways = [batch.formula.stages[-1].steps, *(branch.steps for branch in batch.formula.branches)]
    return [step.applied.grams for steps in ways for step in steps if step.applied is not None]


def test_as_written() -> None:
    assert touching(AS_WRITTEN) == [100, 20, 2, 24]


@pytest.mark.parametrize("times", [Fraction(1, 2), Fraction(1, 10), Fraction(3)])
def test_all_of_it_in_proportion(times: Fraction) -> None:
    flour = PieceWeights(formula_of(TEXT)).written_flour().value
    assert isinstance(flour, Fraction)
    dust, *_, each, _ = touching(Order(flour=flour * times))
    assert (dust, each) == (100 * times, 2)


def test_each_sort_by_its_own_pieces() -> None:
    pieces = ((Fraction(5), "loaves"), (Fraction(48), "rolls"))
    _, loaves, each, rolls = touching(Order(pieces=pieces))
    assert (loaves, each, rolls) == (10, 2, 48)
