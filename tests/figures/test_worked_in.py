"""What is worked into one sort after dividing has a figure, with its rule and what went in."""

from __future__ import annotations

from fractions import Fraction

import pytest
from loaves import NUTTY_ROLLS
from works import first_work

from manchet.figures.derived import Figures, figures_of


def figures(text: str) -> Figures:
    return figures_of(first_work(text))


def test_hazelnuts_of_a_roll() -> None:
    found = figures(NUTTY_ROLLS).totals
    nuts = found["hazelnuts, into the rolls"]
    assert nuts.value == Fraction(24 * 110) * 12 / 112 and nuts.unit == "g"
    assert {given.name: given.value for given in nuts.inputs} == {
        "hazelnuts, of the dough": 12, "rolls": 24, "one of the rolls": 110,
    }  # fmt: skip
    assert found["dough for one of the rolls, before anything is added"].value == Fraction(11000, 112)


def test_all_that_is_made_adds_up() -> None:
    """Dough at the scale and what is worked in are the pieces."""
    text = NUTTY_ROLLS.replace("    add hazelnuts 12%", "    add raisins 8% of the dough\n      add hazelnuts 12%")
    found = figures(text).totals
    added = sum(figure.value for name, figure in found.items() if ", into the " in name)
    assert found["divided_grams"].value + added == 10 * 900 + 24 * 110


@pytest.mark.parametrize("noun", ["roll", "rolls"])
def test_a_sort_is_the_same_in_one_and_many(noun: str) -> None:
    text = NUTTY_ROLLS.replace("for the rolls", f"for the {noun}")
    assert figures(text).totals[f"hazelnuts, into the {noun}"].value == Fraction(24 * 110) * 12 / 112


def test_nothing_where_nothing_is_added() -> None:
    assert not [
        n for n in figures(NUTTY_ROLLS.replace("      add hazelnuts 12% of the dough\n", "")).totals if "into the" in n
    ]
