"""A bath is as large as its vessel needs, however little the bread takes up of it."""

from __future__ import annotations

from fractions import Fraction

from every import every
from works import bakery_of

from manchet.figures.baths import USUAL, Because, Made, amount_of, is_liquid

BATH = "preparation malt bath\n  water 5000 g\n  malt syrup 150 g\n{}  stir 3 min\n  good for 1 d at 4 C\n"
SEEDS = "preparation seed mix\n  sesame seeds 500 g\n  water 100 g\n{}  stir 1 min\n  good for 3 d at 4 C\n"


@every(
    [
        (BATH, "", 48, True, Made(USUAL, Because.USUAL)),
        (BATH, "", 48, False, Made(Fraction(48))),
        (BATH, "", 1500, True, Made(Fraction(1500))),
        (BATH, "  never under 2 kg\n", 48, True, Made(Fraction(2000), Because.FILE)),
        (BATH, "  never under 2 kg\n", 48, False, Made(Fraction(2000), Because.FILE)),
        (BATH, "  never under 2 lb\n", 48, True, Made(Fraction("907.18474"), Because.FILE)),
        (SEEDS, "", 48, True, Made(Fraction(48))),
    ],
    at_least=7,
)
def test_how_much_is_made(text: str, line: str, wanted: int, dipped: bool, made: Made) -> None:
    (formula,) = bakery_of(text.format(line)).formulas
    assert amount_of(formula, Fraction(wanted), dipped) == made


def test_half_of_a_bath_is_a_liquid() -> None:
    assert [is_liquid(bakery_of(text.format("")).formulas[0]) for text in (BATH, SEEDS)] == [True, False]
