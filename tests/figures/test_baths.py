"""A bath is as large as its vessel needs, however little the bread takes up of it."""

from __future__ import annotations

from fractions import Fraction

from every import every
from works import bakery_of, work_in, works

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work
from manchet.figures.baths import USUAL, Because, Made, amount_of, boiled_in, is_liquid
from manchet.formula.model import Formula
from manchet.workspace.bound_formula import known_preparations
from manchet.workspace.made_ahead import made_ahead

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


RINGS = (
    BATH.format("")
    + """
formula Rings
  kind boiled
  makes 12 rings at 100 g dough
  percentages of dough flour
  dough
    white flour 100%
    water 55%
    salt 2%
    instant yeast 1%
    mix slow 10 min to 25 C
    ferment 60 min at 24 C
    divide
    shape
    boil in malt bath 30 s a side
    bake 15 min at 230 C
"""
)


def test_what_pieces_are_boiled_in_is_made_whole_at_home_and_in_a_bakery() -> None:
    """A kettle is filled, whatever twelve rings take up of it: the file's 5,150 g."""
    bakery = bakery_of(RINGS)
    works_of = {work.formula.name: work for work in works(bakery)}
    bath, rings = works_of["malt bath"], works_of["Rings"]
    known = known_preparations(bakery.formulas)

    def sized(formula: Formula, grams: Fraction | None) -> Work:
        return work_in(bakery, formula, AS_WRITTEN if grams is None else Order(dough=grams))

    for at_home in (True, False):
        (ahead,) = made_ahead([rings], known, sized, at_home)
        assert ahead.work.batch.dough == bath.batch.dough == 5150
        assert ahead.dipped and not ahead.wanted
    assert boiled_in(rings.batch) == {"malt bath"}


def test_a_pot_is_no_bath() -> None:
    assert not any(boiled_in(work.batch) for work in works(bakery_of(RINGS.replace("in malt bath", "in pot"))))
