"""What a dish's cost sheet says is left over of its bread weighs what the slices weigh that are left, and not their dough."""

from __future__ import annotations

from fractions import Fraction

from dishes.bread import ALL
from dishes.test_dishes import dish

from manchet.costing.charges import charges_of

PART = "  Plain loaf 2 slices each\n  slice into 22 slices, loses 6%\n"


def left(text: str) -> Fraction:
    return next(one.grams for one in charges_of(dish(text)).spare if one.what == "Plain loaf")


def test_slices_that_are_left_have_the_weight_of_slices() -> None:
    """18 of the 66 slices of three loaves, 783 x 0.94 / 22 g each."""
    assert left(ALL) == 18 * Fraction(783) * 94 / 100 / 22


def test_what_is_left_of_a_weighed_bread_is_finished_bread() -> None:
    """24 x 70 g of loaves of 783 g: three of them, 669 g left."""
    assert left(ALL.replace(PART, "  Plain loaf 70 g each\n")) == 3 * 783 - 24 * 70


def test_what_nobody_weighed_has_a_share_and_no_weight() -> None:
    assert left(ALL.replace("  bake loss 13%\n", "")) == 0
