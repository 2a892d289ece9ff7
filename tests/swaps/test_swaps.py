"""Swaps: there and back is where it was; water, salt and flour stay; the published factors; and clear reports."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import pytest
from every import every
from hypothesis import given, strategies as st
from swaps.bread import WAYS, bread, share, shares, sound_formula, water_of_powders, with_swaps

from manchet.batch.totals import totals_of
from manchet.formula.model import Swapped
from manchet.larder.book import builtin
from manchet.larder.yeast_factors import PRINTED, factors_of

THERE_AND_BACK = [
    ("fresh yeast", "instant yeast"), ("fresh yeast", "active dry yeast"), ("fresh yeast", "sweet-dough yeast"),
    ("fresh yeast", "fresh sweet-dough yeast"), ("milk", "whole milk powder"), ("milk", "milk powder"),
    ("butter", "sunflower oil"), ("butter", "salted butter"), ("honey", "sugar"),
]  # fmt: skip
KEPT_TO_THE_GRAM = [pair for pair in THERE_AND_BACK if "yeast" not in pair[0]]
"""Yeasts are made up to the weight of the fresh; all else to the water in it."""


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize(("off", "on"), THERE_AND_BACK)
@given(percent=st.integers(20, 400).map(lambda n: f"{n / 100:.2f}"), butter=st.integers(1, 80).map(str))
def test_there_and_back_is_where_it_was(way: str, off: str, on: str, percent: str, butter: str) -> None:
    text = bread(way, fresh_yeast=percent, butter=butter)
    before = sound_formula(with_swaps(text))
    after = sound_formula(with_swaps(text, f"{off} for {on}", f"{on} for {off}"))
    assert shares(after) == shares(before)
    assert after.dough_share == before.dough_share


@every([(way, off, on) for way in WAYS for off, on in KEPT_TO_THE_GRAM], at_least=20)
def test_water_in_all_salt_and_flour_stay(way: str, off: str, on: str) -> None:
    before, after = sound_formula(with_swaps(bread(way))), sound_formula(with_swaps(bread(way), f"{off} for {on}"))
    assert share(after, off) == 0 < share(after, on)
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    assert now.salt == was.salt
    assert now.water_in_all + water_of_powders(after) == was.water_in_all + water_of_powders(before)
    assert sum(line.share for line in after.overall if line.is_flour) == 1


@every(product(WAYS, ("instant yeast", "active dry yeast", "sweet-dough yeast")), at_least=12)
def test_the_dough_weighs_what_it_did_with_another_yeast(way: str, on: str) -> None:
    before, after = (
        sound_formula(with_swaps(bread(way))),
        sound_formula(with_swaps(bread(way), f"fresh yeast for {on}")),
    )
    assert after.dough_share == before.dough_share


def test_the_water_is_made_up_in_the_stage_of_the_yeast() -> None:
    before = shares(sound_formula(with_swaps(bread("overall"))))
    after = shares(sound_formula(with_swaps(bread("overall"), "fresh yeast for instant yeast")))
    made_up = Fraction("0.67") * before["sponge", "fresh yeast"]
    assert after["sponge", "water"] - before["sponge", "water"] == made_up


@every(
    [
        ("", "active dry yeast", "0.4"), ("", "instant yeast", "0.33"),
        ("0.33 0.40", "active dry yeast", "0.4"), ("0.33 0.40", "instant yeast", "0.33"),
        ("0.33 0.50", "active dry yeast", "0.5"), ("0.33 0.50", "instant yeast", "0.33"),
        ("1/3 0.40", "instant yeast", "1/3"),
        ("9/32 3/8", "active dry yeast", "3/8"), ("9/32 3/8", "instant yeast", "9/32"),
    ],
    at_least=9,
)  # fmt: skip
def test_the_kitchen_chooses_the_factor(kitchen: str, on: str, factor: str) -> None:
    text = bread("overall") + (f"\nkitchen K\n  yeast factors {kitchen}\n" if kitchen else "")
    (made,) = sound_formula(with_swaps(text, f"fresh yeast for {on}")).swapped
    assert made.factor == Fraction(factor)
    instant, active_dry = map(Fraction, (kitchen or "0.33 0.40").split())
    assert made.source == factors_of(instant, active_dry).source != "the kitchen's own factors"


def test_three_ounces_of_instant_for_nine_of_fresh() -> None:
    """Grain Craft, formula sheet: 1.5 oz instant or 4.5 oz fresh."""
    assert PRINTED[2].instant * Fraction("4.5") == Fraction("1.5")


def test_instant_is_three_quarters_of_active_dry() -> None:
    """Manuals of several bread machines: active dry x 0.75 is instant."""
    assert PRINTED[3].instant / PRINTED[3].active_dry == Fraction(3, 4)


def test_water_made_up_is_two_thirds_of_the_fresh_yeast_and_not_the_printed_slip() -> None:
    (made,) = sound_formula(with_swaps(bread("overall"), "fresh yeast for instant yeast")).swapped
    assert made.moved == (("water", Fraction("0.67") * made.share),)
    assert made.moved[0][1] != Fraction("0.77") * made.share  # as one page prints it


def test_salt_comes_down_with_salted_butter() -> None:
    (made,) = sound_formula(with_swaps(bread("overall"), "butter for salted butter")).swapped
    assert dict(made.moved)["salt"] < 0
    assert "salt" in dict(made.moved)


def test_whole_milk_for_powder_of_skimmed_says_what_is_missing() -> None:
    (made,) = sound_formula(with_swaps(bread("overall"), "milk for milk powder")).swapped
    assert made.said.startswith("fat is not made up: 3.")


def test_flour_takes_its_own_water_where_the_larder_says() -> None:
    larder = "\nlarder L\n  white flour\n    absorbs water 62%\n  spelt flour\n    absorbs water 58%\n"
    before = sound_formula(with_swaps(bread("overall") + larder))
    after = sound_formula(with_swaps(bread("overall") + larder, "white flour for spelt flour"))
    assert share(after, "water") - share(before, "water") == Fraction("-0.04")
    assert share(after, "spelt flour") == 1


ANOTHER_FLOUR = (
    ("whole wheat flour", "0.09", "6 to 12 % of its weight more water"),
    ("spelt flour", "-0.03", "1 to 5 % of its weight less water"),
    ("00 flour", "0", "from 2 % of its weight less to 2 % more water"),
    ("medium rye flour", "0.19", "17 to 21 % of its weight more water"),
)


@every([(way, *flour) for way in WAYS for flour in ANOTHER_FLOUR], at_least=16)
def test_common_flours_take_each_others_place_by_an_estimate_that_says_so(
    way: str, on: str, moved: str, said: str
) -> None:
    before, after = (
        sound_formula(with_swaps(bread(way))),
        sound_formula(with_swaps(bread(way), f"white flour for {on}")),
    )
    assert share(after, "water") - share(before, "water") == Fraction(moved)
    (made,) = after.swapped
    assert made.said == f"an estimate: {said}; begin with the least"
    assert "Teigausbeute" in made.source  # where the figure of white flour is from


@pytest.mark.parametrize(
    ("flour", "percent"),
    [("rye 815", 70), ("rye 997", 73), ("rye 1150", 75), ("rye 1370", 78)],
)
def test_water_of_rye_types_is_that_of_the_test_bakes(flour: str, percent: int) -> None:
    """Rye baking tests, samartha.net: 70 to 78 % by type."""
    known = builtin().ingredient(flour)
    assert known is not None and known.takes_water is not None
    assert known.takes_water.likely == Fraction(percent, 100)


@pytest.mark.parametrize(
    ("flour", "low", "high"), [("white flour", 154, 158), ("wheat 550", 154, 158), ("whole rye flour", 176, 180)]
)
def test_water_by_german_dough_yields(flour: str, low: int, high: int) -> None:
    """Encyclopaedia, Teigausbeute: net yields by product, 100 of them flour."""
    known = builtin().ingredient(flour)
    assert known is not None and known.takes_water == (Fraction(low - 100, 100), Fraction(high - 100, 100))


@pytest.mark.parametrize("way", ["explicit", "weight"])
def test_a_culture_brings_its_flour_and_water_and_leaves_them_again(way: str) -> None:
    text = bread(way)
    if way == "explicit":
        text = (
            text[: text.index("  dough\n")] + "  dough\n    everything else" + text[text.index("\n    mix by hand") :]
        )
    before = sound_formula(with_swaps(text))
    there = sound_formula(with_swaps(text, "fresh yeast for ripe wheat starter with 20% of all flour"))
    assert totals_of(there, builtin()).prefermented == Fraction("0.2")
    assert totals_of(there, builtin()).water_in_all == totals_of(before, builtin()).water_in_all
    back = sound_formula(
        with_swaps(
            text,
            "fresh yeast for ripe wheat starter with 20% of all flour",
            "ripe wheat starter for fresh yeast with 2% of all flour",
        )
    )
    assert shares(back) == shares(before)


def test_what_was_there_already_is_joined() -> None:
    made = sound_formula(with_swaps(bread("overall", sugar="3"), "honey for sugar"))
    assert share(made, "sugar") > Fraction("0.03")
    assert [line.name for line in made.overall].count("sugar") == 1


def test_what_is_held_back_and_added_takes_the_new_name() -> None:
    text = bread("overall").replace("    everything else\n", "    everything else\n    hold back butter\n")
    text = text.replace("    ferment", "    add butter\n    ferment")
    made = sound_formula(with_swaps(text, "butter for sunflower oil"))
    assert [g.key for s in made.stages[-1].steps for g in s.goes] == ["sunflower oil"]


@every(
    [
        ("lard for butter", "swap-not-there", "there is no lard in Bread to swap"),
        ("butter for milk", "swap-unknown", "no rule says how much milk takes the place of butter"),
        ("butter for butter", "swap-unknown", "butter is the same as butter"),
        ("fresh yeast for compressed yeast", "swap-unknown", "in the larder both are fresh yeast"),
        ("lard for oil", "swap-not-there", "there is no lard in Bread"),  # before it is asked which oil
        ("fresh yeast for gold leaf dust", "unknown-ingredient", "neither a stage"),
        ("fresh yeast for yeast", "ambiguous-ingredient", "more than one thing"),
        ("white flour for chestnut flour", "swap-asks", "does not say how much water"),
        ("fresh yeast for ripe wheat starter", "swap-asks", "depends on the hours"),
        ("fresh yeast for ripe wheat starter with 0% of all flour", "swap-asks", "0% is not a share"),
        ("fresh yeast for ripe wheat starter with 120% of all flour", "swap-asks", "less than 100%"),
    ],
    at_least=11,
)
def test_a_swap_that_cannot_be_is_one_report(swap: str, name: str, says: str) -> None:
    bakery = with_swaps(bread("overall"), swap)
    assert [d.name for d in bakery.diagnostics] == [name]
    assert says in bakery.diagnostics[0].message
    assert bakery.diagnostics[0].help
    assert not bakery.formulas


@pytest.mark.parametrize("share", ["0%", "100%", "120%"])
def test_a_yeast_is_a_share_of_all_flour(share: str) -> None:
    there = "fresh yeast for ripe wheat starter with 20% of all flour"
    (report,) = with_swaps(
        bread("weight"), there, f"ripe wheat starter for fresh yeast with {share} of all flour"
    ).diagnostics
    assert report.name == "swap-asks" and f"{share} is not a share of all flour" in report.message


def test_the_first_swap_took_it() -> None:
    (report,) = with_swaps(bread("overall"), "butter for lard", "butter for sunflower oil").diagnostics
    assert report.name == "swap-taken-before" and "`swap butter for lard`" in report.message
    assert sound_formula(with_swaps(bread("overall"), "butter for lard", "lard for sunflower oil"))


def test_more_cannot_be_taken_off_than_there_is() -> None:
    text = bread("overall", salt="0.05", butter="20")
    (report,) = [d for d in with_swaps(text, "butter for salted butter").diagnostics if d.severity.value == "error"]
    assert (report.name, report.place.path) == ("swap-short", "--swap")


def test_a_swap_keeps_its_record() -> None:
    (made,) = sound_formula(with_swaps(bread("overall"), "fresh yeast for instant yeast")).swapped
    assert isinstance(made, Swapped)
    assert (made.off, made.on, made.share) == ("fresh yeast", "instant yeast", Fraction("0.02"))


@pytest.mark.parametrize(
    ("text", "swap"),
    [
        (bread("overall"), "fresh yeast for ripe rye starter with 20% of all flour"),  # no rye in it
        (bread("weight", water="5"), "fresh yeast for ripe wheat starter with 20% of all flour"),  # nor so much water
        (bread("dough flour", water="5"), "fresh yeast for ripe wheat starter with 20% of all flour"),
    ],
)
def test_a_culture_that_does_not_fit_is_left_to_the_baker(text: str, swap: str) -> None:
    assert [d.name for d in with_swaps(text, swap).diagnostics] == ["swap-by-hand"]


def test_a_culture_on_another_wheat_flour_is_counted_as_the_formulas() -> None:
    made = sound_formula(with_swaps(bread("weight"), "fresh yeast for ripe whole wheat starter with 20% of all flour"))
    assert share(made, "white flour") == 1
    assert {p.counted_as for s in made.stages for p in s.portions if p.key == "ripe whole wheat starter"} == {
        "white flour"
    }
