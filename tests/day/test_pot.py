"""The pots over a week: sums worked out by hand."""

from __future__ import annotations

from datetime import date, datetime
from fractions import Fraction as F

from manchet.day.pot import PotMove, pots_of
from manchet.larder.ingredient import Blend, Ingredient

RYE = Ingredient(
    "ripe rye starter", "culture", made_of=(Blend("rye flour", F(1, 2)), Blend("water", F(1, 2))), good_for=F(3 * 86400)
)


def out(day: int, grams: int, hour: int = 20) -> PotMove:
    return PotMove(RYE.name, "Ebb rye", datetime(2026, 11, day, hour), F(grams))


def back(day: int, grams: int, hour: int = 9) -> PotMove:
    return PotMove(RYE.name, "Ebb rye", datetime(2026, 11, day, hour), F(0), F(grams))


def week(*moves: PotMove, until: int = 29):  # type: ignore[no-untyped-def]
    (pot,) = pots_of(moves, {RYE.name: RYE}, date(2026, 11, until))
    return pot


def test_what_is_taken_before_anything_is_given_back_must_be_there() -> None:
    assert week(out(23, 150), out(23, 105, 22), back(24, 220), until=24).needed == 255


def test_a_pot_that_is_given_back_enough_is_not_fed() -> None:
    pot = week(out(23, 150), back(24, 150), out(25, 150), back(26, 150), until=27)
    assert (pot.feedings, pot.short) == ((), ())


def test_a_pot_is_fed_the_evening_before_a_use_that_wants_more() -> None:
    pot = week(out(23, 150), back(24, 100), out(26, 160), back(27, 100), until=27)
    (fed,) = pot.feedings
    assert (fed.on, fed.there, fed.wanted, fed.because) == (date(2026, 11, 25), 100, 160, "use")
    assert fed.parts == (("rye flour", 30), ("water", 30))


def test_a_pot_that_stands_is_fed_when_it_is_good_no_longer() -> None:
    pot = week(out(23, 150), back(24, 150), until=29)
    assert [(fed.on.day, fed.because) for fed in pot.feedings] == [(27, "stands")]


def test_a_pot_that_no_feeding_brings_up_does_not_reach() -> None:
    pot = week(out(23, 150), back(24, 10), out(26, 200), until=26)
    (short,) = pot.short
    assert (short.bread, short.wanted, short.most) == ("Ebb rye", 200, 110)


def test_what_a_plan_says_of_a_pot_is_where_it_begins() -> None:
    (fed,) = pots_of([out(23, 150)], {RYE.name: RYE}, date(2026, 11, 23), {RYE.name: F(100)})[0].feedings
    assert (fed.on, fed.there, fed.wanted) == (date(2026, 11, 22), 100, 150)
    (short,) = pots_of([out(23, 150)], {RYE.name: RYE}, date(2026, 11, 23), {RYE.name: F(10)})[0].short
    assert (short.wanted, short.most) == (150, 110)
