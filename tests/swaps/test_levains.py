"""A levain for yeast and yeast for a levain, by the flour in it: in every way of writing, whole stages of it too."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import pytest
from every import every
from hypothesis import given, strategies as st
from run_length import FEW_EXAMPLES
from swaps.bread import STEPS, WAYS, bread, share, shares, sound_formula, with_swaps
from swaps.rich import OF_DOUGH_FLOUR

from manchet.batch.totals import totals_of
from manchet.formula.model import Formula
from manchet.larder.book import builtin

OVERALL = f"""formula Bread
  makes 4 loaves at 500 g dough
  overall
    white flour 90%
    whole rye flour 10%
    water 70%
    salt 2%
  levain with 20% of all flour
    white flour 50%
    whole rye flour 50%
    water 100%
    ripe rye starter 10%
    mix by hand 3 min
    ripen covered 8 h at 24 C
    keep 60 g as ripe rye starter
  dough
    levain
    everything else
    hold back salt
    mix by hand 3 min
    add salt{STEPS}"""
SAID_ALOUD = OVERALL.replace(
    "    everything else\n", "    white flour 79%\n    what is left of the water\n    salt 2%\n"
)
SAID_ALOUD = SAID_ALOUD.replace("    white flour 79%", "    white flour 80%").replace("keep 60 g", "keep enough")
SAID_ALOUD = SAID_ALOUD.replace(
    "    white flour 50%\n    whole rye flour 50%", "    white flour 50%\n    all of the whole rye flour"
)
RETURNED = OVERALL.replace("    keep 60 g as ripe rye starter\n", "").replace(
    "    mix by hand 3 min\n    ripen", "    mix by hand 3 min\n    ripen", 1
)
RETURNED = RETURNED.replace(
    "    ripen covered 8 h at 24 C\n", "    ripen covered 8 h at 24 C\n    return ripe rye starter\n"
)
TWO_BUILDS = (
    OVERALL.replace(
        "  levain with 20%",
        """  sour first with 2% of all flour
    whole rye flour 100%
    water 100%
    ripe rye starter 20%
    mix by hand 3 min
    ripen covered 6 h at 26 C
  levain with 18%""",
    )
    .replace("    ripe rye starter 10%\n", "    first\n")
    .replace("white flour 50%\n    whole rye flour 50%", "white flour 60%\n    whole rye flour 40%")
)
BY_WEIGHT = f"""formula Bread
  makes 4 loaves at 500 g dough
  levain
    white flour 100 g
    water 100 g
    ripe wheat starter 20 g
    mix by hand 3 min
    ripen covered 8 h at 24 C
    keep what is left as ripe wheat starter
  dough
    levain 165 g
    white flour 1 kg
    water 650 g
    salt 22 g{STEPS}"""
DOUGH_FLOUR = f"""formula Bread
  makes 4 loaves at 500 g dough
  written on dough flour
  levain
    white flour 100%
    water 60%
    ripe wheat starter 20%
    mix by hand 3 min
    ripen covered 8 h at 24 C
  dough
    white flour 100%
    levain 40%
    water 65%
    salt 2.4%{STEPS}"""
BREADS = {"overall": OVERALL, "said aloud": SAID_ALOUD, "returned": RETURNED, "two builds": TWO_BUILDS,
          "by weight": BY_WEIGHT, "dough flour": DOUGH_FLOUR}  # fmt: skip


def culture_in(text: str) -> str:
    return "ripe rye starter" if "ripe rye starter" in text else "ripe wheat starter"


def flours(formula: Formula) -> dict[str, Fraction]:
    return {line.name: line.share for line in formula.overall if line.is_flour}


@pytest.mark.parametrize("which", BREADS)
def test_a_levain_falls_away_and_its_flour_goes_into_the_dough(which: str) -> None:
    text = BREADS[which]
    before, after = (
        sound_formula(with_swaps(text)),
        sound_formula(with_swaps(text, f"{culture_in(text)} for fresh yeast with 1.5% of all flour")),
    )
    assert [stage.key for stage in after.stages] == ["dough"]
    assert flours(after) == flours(before)
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    assert now.water_in_all == was.water_in_all
    assert now.salt == was.salt
    assert now.prefermented == 0 < was.prefermented
    assert share(after, "fresh yeast") == Fraction("0.015")
    (made,) = after.swapped
    assert "go by the look" in made.said and "levain" in made.said


@every(product(WAYS, ("5", "12.5", "30")), at_least=12)
def test_yeast_for_a_culture_with_so_much_of_the_flour_in_it(way: str, figure: str) -> None:
    before = sound_formula(with_swaps(bread(way)))
    after = sound_formula(with_swaps(bread(way), f"fresh yeast for ripe wheat starter with {figure}% of all flour"))
    assert [stage.key for stage in after.stages] == ["dough"]  # a sponge has no life without its yeast
    assert flours(after) == flours(before)
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    assert now.prefermented == Fraction(figure) / 100
    assert (now.water_in_all, now.salt) == (was.water_in_all, was.salt)


@pytest.mark.parametrize("way", ["weight", "dough flour"])
def test_there_and_back_is_where_it_was(way: str) -> None:
    text = bread(way)
    there = "fresh yeast for ripe wheat starter with 20% of all flour"
    assert shares(
        sound_formula(with_swaps(text, there, "ripe wheat starter for fresh yeast with 2% of all flour"))
    ) == shares(sound_formula(with_swaps(text)))


def test_a_stage_that_uses_the_levain_among_other_things_stays() -> None:
    text = OF_DOUGH_FLOUR.replace("  sponge\n", "  stage enriched\n").replace("    sponge 40%", "    enriched 40%")
    before = sound_formula(with_swaps(text))
    after = sound_formula(with_swaps(text, "ripe wheat starter for fresh yeast with 1% of all flour"))
    assert [stage.key for stage in after.stages] == ["enriched", "dough"]
    assert flours(after) == flours(before)
    assert totals_of(after, builtin()).water_in_all == totals_of(before, builtin()).water_in_all
    assert share(after, "fresh yeast") == share(before, "fresh yeast") + Fraction("0.01")


def test_the_waits_stay_and_that_is_said() -> None:
    made = sound_formula(
        with_swaps(bread("weight"), "fresh yeast for ripe wheat starter with 20% of all flour")
    ).swapped[0]
    assert made.said == "the waits are those written for fresh yeast: go by the look"
    sponge = sound_formula(
        with_swaps(bread("overall"), "fresh yeast for ripe wheat starter with 20% of all flour")
    ).swapped[0]
    assert sponge.said.startswith("the sponge falls away, what was in it goes into the dough; ")


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("yeast", ["fresh yeast", "instant yeast"])
@given(leaven=st.integers(1, 40), yeasted=st.integers(10, 400), water=st.integers(50, 90))
@FEW_EXAMPLES
def test_water_in_all_stays_whatever_the_share(way: str, yeast: str, leaven: int, yeasted: int, water: int) -> None:
    percent = f"{yeasted / 100:.2f}"
    text = bread(way, fresh_yeast=percent, water=str(water)).replace("fresh yeast", yeast)
    there = f"{yeast} for ripe wheat starter with {leaven}% of all flour"
    was, now = (totals_of(sound_formula(with_swaps(text, *swaps)), builtin()) for swaps in ((), (there,)))
    assert (now.water_in_all, now.salt) == (was.water_in_all, was.salt)


@pytest.mark.parametrize("which", BREADS)
@pytest.mark.parametrize("yeast", ["fresh yeast", "instant yeast"])
@given(yeasted=st.integers(1, 400).map(lambda n: f"{n / 100:.2f}"))
@FEW_EXAMPLES
def test_water_in_all_stays_where_a_levain_falls_away(which: str, yeast: str, yeasted: str) -> None:
    text = BREADS[which]
    swap = f"{culture_in(text)} for {yeast} with {yeasted}% of all flour"
    was, now = (totals_of(sound_formula(with_swaps(text, *swaps)), builtin()) for swaps in ((), (swap,)))
    assert now.water_in_all == was.water_in_all
