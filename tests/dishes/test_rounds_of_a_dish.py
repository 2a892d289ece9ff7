"""What stands on a dish's griddle is its slices: dish sheet, step sheet, plan and cost count the same rounds of them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from dishes.bread import ALL
from dishes.test_dishes import dish, sheet

from manchet.costing.work_and_fire import hands_of
from manchet.day.jobs.timing import part_of
from manchet.timing.jobs.loads import Doing
from manchet.timing.jobs.rounds import rounds_of

GRIDDLE = "griddle 60 s a side at 200 C, 12 at a time"


def toast(at_a_time: int, plates: int, slices: int = 2) -> str:
    text = ALL.replace("12 at a time", f"{at_a_time} at a time").replace("24 plates", f"{plates} plates")
    return text.replace("2 slices each", f"{slices} slices each").replace(
        "slice into 22 slices", "slice into 22 slices 0 s each"
    )


@pytest.mark.parametrize(
    ("at_a_time", "plates", "slices", "rounds", "said"),
    [
        (8, 12, 2, 3, "3 rounds of 4 plates"),
        (8, 8, 2, 2, "2 rounds of 4 plates"),
        (8, 24, 2, 6, "6 rounds of 4 plates"),
        (8, 11, 2, 3, "3 rounds: 2 of 4 plates, the last of 3"),
        (1, 12, 2, 24, "24 rounds of 1 slice"),
        (8, 12, 3, 5, "5 rounds: 4 of 8 slices, the last of 4"),
    ],
)
def test_slices_are_counted_on_every_page(at_a_time: int, plates: int, slices: int, rounds: int, said: str) -> None:
    """Two minutes a round, 60 s a side: 24 slices, 8 at a time, are 3 rounds and 6 min."""
    work = dish(toast(at_a_time, plates, slices))
    (step,) = (step for step in work.formula.dough.steps if step.verb == "griddle")
    found = rounds_of(step, Fraction(plates), work.kitchen)
    assert found is not None and found.number == rounds
    assert sheet(work).rounds == said
    assert part_of(Doing(step, Fraction(plates)), work).seconds == rounds * 120
    assert hands_of(work).seconds == rounds * 120


def test_patties_heated_in_a_stage_of_their_own_are_counted_too() -> None:
    """24 plates of 2 patties, 8 at a time: 6 rounds of 3 min."""
    text = ALL.replace("  top with bean paste 40 g each\n", "  top with hot patties 50 g each\n").replace(
        GRIDDLE, "griddle 60 s a side at 200 C"
    )
    text = text.replace(
        "  serve within 10 min\n",
        "  serve within 10 min\n\n  stage hot patties\n    bean patties 2 whole each\n    griddle 90 s a side at 200 C, 8 at a time\n    discard what is left\n",
    )
    text = text.replace(
        "preparation bean paste\n  makes 1 kg at least", "preparation bean patties\n  makes 48 patties at 40 g raw"
    )
    work = dish(text)
    assert hands_of(work).seconds - hands_of(dish(text.replace(", 8 at a time", ", 48 at a time"))).seconds == 5 * 180
