"""How damp a prover is: said in a step, else by the kitchen of the prover that the step names."""

from __future__ import annotations

from fractions import Fraction

import pytest
from loaves import PLAIN_LOAF, vary
from works import first_work

from manchet.formula.model import Range

KITCHEN = "\nkitchen Row\n  prover cupboard\n    keeps 27 C, 75% humidity\n  prover box\n    keeps 27 C\n"


@pytest.mark.parametrize(
    ("proof", "low", "high"),
    [
        ("prove 1 h at 27 C, 80% humidity", 80, 80),
        ("prove 1 h at 27 C, 70-80% humidity", 70, 80),
        ("prove 1 h at 27 C in cupboard", 75, 75),
        ("prove 1 h at 27 C in cupboard, 80% humidity", 80, 80),
        ("prove 1 h at 27 C in box", None, None),
        ("prove 1 h at 27 C", None, None),
    ],
)
def test_the_air_of_a_step(proof: str, low: int | None, high: int | None) -> None:
    work = first_work(vary(PLAIN_LOAF, prove=proof.removeprefix("prove ")) + KITCHEN)
    (step,) = (step for step in work.formula.steps if step.verb == "prove")
    assert step.humidity == (None if low is None else Range(Fraction(low, 100), Fraction(high or 0, 100)))
