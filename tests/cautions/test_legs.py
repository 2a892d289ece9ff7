"""The line of temperatures: a leg for each step, and what is asked of it. What the file does not say is the worse."""

from fractions import Fraction

from every import every
from works import bakery_of, works

from manchet.cautions.legs import (
    Leg,
    comes_to,
    coolings,
    out_of_the_cold,
    stays_at,
    was_boiled,
)
from manchet.cautions.limits import figure, limit
from manchet.cautions.vessel import FoodVessel, breads_of, vessels_of

HOUR, MINUTE = 3600, 60


def legs_of(*steps: str) -> tuple[Leg, ...]:
    text = "\n".join(["preparation thing", "  milk 1000 g", "  egg yolks 200 g", *(f"  {step}" for step in steps), ""])
    (work,) = works(bakery_of(text))
    return vessels_of(work)[0].legs


def test_a_leg_says_how_long_from_what_to_what_and_where() -> None:
    heat, cool, rest = legs_of("heat 8-10 min to 83-85 C", "cool 1-2 h to 20-22 C at 15 C", "rest 30 min")
    assert (heat.least, heat.most, heat.start, heat.end) == (480, 600, 20, (83, 85))
    assert (cool.least, cool.most, cool.start) == (HOUR, 2 * HOUR, 85), "as warm as it may be"
    assert (cool.around, cool.is_said) == (15, True)
    assert (rest.start, rest.around, rest.is_said) == (22, 20, False), "a room's, where nothing is said"


def test_what_is_not_said_to_grow_cold_has_not() -> None:
    heat, chill, rest = legs_of("heat 8 min to 85 C", "chill 3 h at 4 C", "rest 10 min")
    assert chill.end == (None, None) and rest.start == heat.end.high == 85
    cold = legs_of("chill 3 h to 4 C", "rest 2 h", "whisk 2 min")
    assert [leg.start for leg in cold] == [20, 4, 20], "and what stands in a room is as warm as that"


REACHED = (
    # steps; 75 C; 71 C for two minutes; both in the middle
    (("heat 8 min to 75 C",), True, False, False, False),
    (("heat 8 min to 70-80 C",), False, False, False, False),
    (("roast 30 min at 220 C",), False, False, False, False),
    (("roast 30 min at 220 C to 75 C core",), True, False, True, False),
    (("heat 8 min to 71 C", "rest 2 min at 72 C"), False, True, False, False),
    (("heat 8 min to 71 C", "rest 2 min"), False, False, False, False),
    (("heat 8 min to 71 C", "rest 1-3 min at 72 C"), False, False, False, False),
    (("roast 30 min at 220 C to 72 C core", "rest 3 min at 71 C"), False, True, False, True),
    (("chill 2 h to 75 C",), False, False, False, False),
)


@every(REACHED, at_least=9)
def test_what_is_hot_enough(
    steps: tuple[str, ...], at_once: bool, for_two: bool, middle: bool, middle_two: bool
) -> None:
    legs, hot, long = legs_of(*steps), Fraction(71), Fraction(120)
    assert comes_to(legs, Fraction(75)) is at_once and stays_at(legs, hot, long) is for_two
    assert comes_to(legs, Fraction(75), True) is middle and stays_at(legs, hot, long, True) is middle_two


def test_only_a_pot_that_boils_boils() -> None:
    assert (
        was_boiled(legs_of("simmer 5 min"))
        and was_boiled(legs_of("steam 5 min"))
        and not was_boiled(legs_of("heat 5 min to 95 C"))
    )


COOLINGS = (
    # steps; hours to 21 C and to 5 C, hours until it is in the cold
    (("heat 8 min to 85 C", "cool 2 h to 21 C", "chill 3 h to 5 C"), 2, 5, 2),
    (("heat 8 min to 85 C", "cool 90 min to 21 C", "chill 260 min to 5 C"), Fraction(3, 2), Fraction(350, 60), Fraction(3, 2)),
    (("heat 8 min to 85 C", "rest 30 min", "chill 2 h to 4 C"), Fraction(5, 2), Fraction(5, 2), Fraction(1, 2)),
    (("heat 8 min to 85 C", "rest 3 h at 65 C", "chill 2 h to 4 C"), 2, 2, 0),
    (("heat 8 min to 85 C", "rest 3 h at 50 C", "chill 2 h to 4 C"), 5, 5, 3),
    (("heat 8 min to 85 C", "chill 2 h at 4 C"), None, None, 0),
    (("heat 8 min to 85 C",), None, None, None),
    (("heat 8 min to 85 C", "cool 1-3 h to 20-22 C", "chill 1 h to 4 C"), 4, 4, 3),
)  # fmt: skip


@every(COOLINGS, at_least=8)
def test_how_fast_it_cools(steps: tuple[str, ...], warm: object, cold: object, fridge: object) -> None:
    found = coolings(legs_of(*steps), Fraction(57), Fraction(21), Fraction(5))[-1]
    assert [None if s is None else s / HOUR for s in (found.warm, found.cold, found.to_fridge)] == [warm, cold, fridge]


def test_each_cooling_between_two_heats_is_one() -> None:
    legs = legs_of("heat 8 min to 85 C", "chill 2 h to 4 C", "heat 20 min to 75 C", "cool 3 h to 21 C")
    assert [one.warm for one in coolings(legs, Fraction(57), Fraction(21), Fraction(5))] == [2 * HOUR, 3 * HOUR]


def test_time_out_of_the_cold_counts_by_its_longest() -> None:
    legs = legs_of("whisk 2-4 min", "rest 1 h", "chill 12 h at 4 C", "heat 1 h to 80 C", "rest 30-50 min")
    assert out_of_the_cold(legs, Fraction(4)) == (4 + 60 + 50) * MINUTE


def test_a_market_has_its_own_figure_and_several_have_the_strictest() -> None:
    """Regulations 2013, schedule 4; US Food Code 3-501.16, 3-401.11, 3-402.11."""
    assert [limit("cold", m) for m in ((), ("Britain",), ("Britain", "EU"), ("US",))] == [5, 8, 5, 5]
    assert [limit("hot", m) for m in ((), ("US",), ("US", "Britain"))] == [63, 57, 63]
    assert [limit("egg-at-once", m) for m in ((), ("US",), ("US", "EU"))] == [75, 71, 75]
    assert figure("fish-frozen-for", ("US", "EU")) == 7 * 24 * HOUR and figure("fish-frozen-for") == 24 * HOUR
    assert limit("fridge-within") is None and limit("fridge-within", ("Britain",)) == 90 * MINUTE


WASHED = """preparation cream
  milk 500 g
  egg yolks 100 g
  heat 8 min to 85 C
  chill 2 h to 4 C
  good for 2 d at 4 C

preparation topping
  cream 300 g
  sugar 50 g
  eggs 100 g
  hold back eggs
  whisk 2 min
  add eggs
  good for 1 d at 4 C

formula Buns
  kind soft
  makes 10 buns at 80 g dough
  dough
    white flour 500 g
    water 280 g
    salt 8 g
    instant yeast 6 g
    mix slow 8 min to 25 C
    ferment covered 60 min at 25 C
    divide
    shape round
    prove 50 min at 28 C
    spread with topping 20 g each
    bake 15 min at 200 C
"""


def test_each_food_has_what_it_went_through_behind_it() -> None:
    (bread,) = (v for work in works(bakery_of(WASHED)) for v in breads_of(work))
    verbs = {food.name: [leg.step.verb for leg in bread.line(food)] for food in bread.foods if food.put_on}
    assert verbs["egg yolks"] == ["heat", "chill", "whisk", "add", "spread", "bake"], "through both, in their order"
    assert verbs["eggs"] == ["add", "spread", "bake"], "from where it comes in"
    assert sum(food.share for food in bread.foods) == 1, "what is put on has no share of the dough"


def test_a_chain_of_a_hundred_preparations_ends() -> None:
    def of(number: int) -> str:
        inside = "eggs 100 g" if not number else f"thing {number - 1} 100 g"
        return f"preparation thing {number}\n  {inside}\n  sugar 10 g\n  whisk 1 min\n  good for 1 d at 4 C\n"

    bakery = bakery_of("\n".join(of(number) for number in range(100)))
    vessels: list[FoodVessel] = [vessels_of(work)[-1] for work in works(bakery)]
    assert {food.name for food in vessels[-1].foods} == {"eggs", "sugar"} and len(vessels) == 100
