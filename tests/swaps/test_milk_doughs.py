"""A dough made with milk: a swap keeps the temperature of what is poured, and weighs no drop of water."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import pytest
from every import every
from hypothesis import given, strategies as st
from run_length import FEW_EXAMPLES
from swaps.bread import STEPS, share, shares, sound_formula, with_swaps
from works import work_in

from manchet.batch.totals import totals_of
from manchet.figures.water.water_grid import DoughWater, water_of
from manchet.larder.book import builtin

KITCHEN = "\nkitchen House\n  air 21 C\n  flour 19 C\n  tap 11 C\n"
HEAD = "formula Bread\n  makes 4 loaves at 500 g dough\n"
ROWS = {"white flour": "100", "milk": "50", "eggs": "10", "butter": "12", "sugar": "10", "salt": "2",
        "fresh yeast": "3"}  # fmt: skip
DONE = STEPS.replace("mix by hand 5 min", "mix by hand 8 min to 25 C")
BIGA = """  biga with 30% of all flour
    white flour 100%
    {} 52%
    fresh yeast 0.5%
    mix by hand 3 min
    ripen covered 4 h at 20 C
"""


def plait(way: str, milk: str = "50") -> str:
    rows = {**ROWS, "milk": milk}
    lines = "".join(f"    {name} {figure}%\n" for name, figure in rows.items())
    match way:
        case "overall":
            text = f"{HEAD}  overall\n{lines}  dough\n    everything else{DONE}"
        case "biga of milk":
            text = f"{HEAD}  overall\n{lines}{BIGA.format('milk')}  dough\n    biga\n    everything else{DONE}"
        case "biga of water":
            water = "    water 15.6%\n"
            text = f"{HEAD}  overall\n{lines}{water}{BIGA.format('water')}  dough\n    biga\n    everything else{DONE}"
        case "explicit":
            every = lines.replace("%", "% of all flour").rstrip()
            text = f"{HEAD}  overall\n{lines}  dough\n{every}{DONE}"
        case "weight":
            text = f"formula Bread\n  makes 1 loaf at 500 g dough\n  dough\n{lines.replace('%', '0 g').rstrip()}{DONE}"
        case _:
            text = f"{HEAD}  written on dough flour\n  dough\n{lines.rstrip()}{DONE}"
    return text + KITCHEN


WAYS = ("overall", "biga of milk", "biga of water", "explicit", "weight", "dough flour")
SWAPS = (
    "butter for salted butter", "butter for margarine", "butter for sunflower oil", "butter for lard",
    "sugar for honey", "fresh yeast for sweet-dough yeast", "fresh yeast for instant yeast",
)  # fmt: skip


def tempered_water(text: str, *swaps: str) -> DoughWater | None:
    bakery = with_swaps(text, *swaps)
    formula = sound_formula(bakery)
    work = work_in(bakery, formula)
    return water_of(work)


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("swap", [swap for swap in SWAPS if "honey" not in swap])  # its water is a tenth of the milk's
@given(tenths=st.integers(320, 600))
@FEW_EXAMPLES
def test_what_is_tempered_stays_tempered(way: str, swap: str, tenths: int) -> None:
    """But for a dough at the very edge of having too little to pour, of which a swap takes two parts of milk at most."""
    if tempered_water(plait(way, f"{(tenths - 20) / 10:g}")) is not None:
        after = tempered_water(plait(way, f"{tenths / 10:g}"), swap)
        assert after is not None and "milk" in after.liquid


@every(product(WAYS, SWAPS), at_least=42)
def test_a_swap_weighs_no_drop_of_water(way: str, swap: str) -> None:
    """In the dough: none, or enough to be worth a line. Flour, water in all and salt stay."""
    before, after = sound_formula(with_swaps(plait(way))), sound_formula(with_swaps(plait(way), swap))
    water = sum((p.share for p in after.stages[-1].portions if p.key == "water"), Fraction(0))
    assert not water or water > Fraction(1, 100)
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    assert now.salt == was.salt
    if "yeast" not in swap:  # yeasts are made up to the weight of the fresh
        assert now.water_in_all == was.water_in_all


@every(product(WAYS, [("butter", "salted butter"), ("butter", "sunflower oil"), ("sugar", "honey")]), at_least=18)
def test_there_and_back_is_where_it_was(way: str, pair: tuple[str, str]) -> None:
    off, on = pair
    there_and_back = sound_formula(with_swaps(plait(way), f"{off} for {on}", f"{on} for {off}"))
    assert shares(there_and_back) == shares(sound_formula(with_swaps(plait(way))))


def test_the_milk_that_gives_the_water_is_said() -> None:
    more = sound_formula(with_swaps(plait("weight"), "butter for salted butter")).swapped[0]
    assert dict(more.moved)["milk"] > 0 and "a little more milk" in more.said
    less = sound_formula(with_swaps(plait("weight"), "sugar for honey")).swapped[0]
    assert dict(less.moved)["milk"] < 0 and "less milk" in less.said


def test_milk_powder_for_milk_still_gets_its_water() -> None:
    after = sound_formula(with_swaps(plait("weight"), "milk for whole milk powder"))
    assert share(after, "water") > Fraction(2, 5)


@pytest.mark.parametrize("powder", ["milk powder", "instant milk powder"])
def test_there_and_back_leaves_a_milk_dough_without_water(powder: str) -> None:
    """Rounded figures of the powder and its water come back as milk, and a few tenths of water under none are none."""
    text = f"""formula Milk buns
  kind soft
  makes 40 buns at 80 g dough

  overall
    white flour          100%
    {powder}           5.8%
    water                 55.1%
    butter                10%
    salt                   1.6%
    fresh yeast            4%

  dough
    everything else
    mix slow 8 min to 26 C
    ferment covered 60 min at 26 C
    divide
    shape round
    prove 50 min at 30 C
    bake 15 min at 200 C
    cool 30 min
"""
    milky = sound_formula(with_swaps(text, f"{powder} for skimmed milk"))
    assert {line.name for line in milky.overall} >= {"skimmed milk"}
    assert share(milky, "water") < Fraction(1, 1000)
