"""Swaps in breads of several stages: what every line holds, what is held back, what leans on a stage's weight."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import pytest
from every import every
from hypothesis import given, strategies as st
from loaves import NUTTY_ROLLS
from swaps.bread import shares, sound_formula, water_of_powders, with_swaps
from swaps.rich import ALL_OF, BREADS, BY_WEIGHT, EVERYTHING_ELSE, OF_DOUGH_FLOUR

from manchet.batch.totals import totals_of
from manchet.formula.model import Formula
from manchet.larder.book import builtin

LARDER = "\nlarder L\n  white flour\n    absorbs water 62%\n  spelt flour\n    absorbs water 58%\n"
BY_COMPOSITION = [
    ("milk", "whole milk powder"), ("milk", "milk powder"), ("butter", "sunflower oil"), ("butter", "olive oil"),
    ("butter", "salted butter"), ("butter", "lard"), ("honey", "sugar"), ("honey", "golden syrup"),
]  # fmt: skip
YEASTS = [("fresh yeast", "instant yeast"), ("fresh yeast", "active dry yeast"), ("fresh yeast", "sweet-dough yeast")]
FLOURS = [("white flour", "spelt flour")]


def in_every_way(pairs: list[tuple[str, str]]) -> list[tuple[str, str, str]]:
    """Each bread with each pair of what goes off and what comes on."""
    return [(bread, off, on) for bread in BREADS for off, on in pairs]


def flour(formula: Formula) -> Fraction:
    return sum((line.share for line in formula.overall if line.is_flour), Fraction(0))


def touching(formula: Formula) -> dict[tuple[str, str], Fraction]:
    steps = (step for stage in formula.stages for step in stage.steps)
    return {(s.verb, s.applied.name): s.applied.grams for s in steps if s.applied is not None}


@every(in_every_way(BY_COMPOSITION), at_least=48)
def test_water_in_all_salt_and_flour_stay(bread: str, off: str, on: str) -> None:
    before, after = (
        sound_formula(with_swaps(BREADS[bread])),
        sound_formula(with_swaps(BREADS[bread], f"{off} for {on}")),
    )
    assert not any(off == p.name for stage in after.stages for p in stage.portions)
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    assert (now.salt, now.prefermented) == (was.salt, was.prefermented)
    assert now.water_in_all + water_of_powders(after) == was.water_in_all + water_of_powders(before)
    assert flour(after) == 1


@every(in_every_way(YEASTS), at_least=18)
def test_the_dough_weighs_what_it_did_with_another_yeast(bread: str, off: str, on: str) -> None:
    before, after = (
        sound_formula(with_swaps(BREADS[bread])),
        sound_formula(with_swaps(BREADS[bread], f"{off} for {on}")),
    )
    assert after.dough_share == before.dough_share
    assert [s.into_share for s in after.stages] == [s.into_share for s in before.stages]


@every(in_every_way([*BY_COMPOSITION, *YEASTS, *FLOURS]), at_least=72)
def test_there_and_back_is_where_it_was(bread: str, off: str, on: str) -> None:
    text = BREADS[bread] + LARDER
    before, after = (
        sound_formula(with_swaps(text)),
        sound_formula(with_swaps(text, f"{off} for {on}", f"{on} for {off}")),
    )
    assert shares(after) == shares(before)
    assert touching(after) == touching(before)


@every(BREADS, at_least=6)
def test_another_flour_brings_its_own_water_and_no_more(bread: str) -> None:
    text = BREADS[bread] + LARDER
    before, after = sound_formula(with_swaps(text)), sound_formula(with_swaps(text, "white flour for spelt flour"))
    assert flour(after) == 1 and {line.name for line in after.overall if line.is_flour} == {"spelt flour"}
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    made_up = sum(share for made in after.swapped for name, share in made.moved if name == "water")
    assert now.water_in_all - was.water_in_all == made_up < 0
    assert now.salt == was.salt


@pytest.mark.parametrize("bread", BREADS)
@given(order=st.permutations(["milk for milk powder", "butter for olive oil", "fresh yeast for instant yeast"]))
def test_several_swaps_come_to_the_same_in_any_order(bread: str, order: list[str]) -> None:
    swaps = ["milk for milk powder", "butter for olive oil", "fresh yeast for instant yeast"]
    one, other = sound_formula(with_swaps(BREADS[bread], *order)), sound_formula(with_swaps(BREADS[bread], *swaps))
    assert {line.name: line.share for line in one.overall} == {line.name: line.share for line in other.overall}


def test_a_sponge_of_milk_gets_the_water_of_its_powder() -> None:
    for text in (EVERYTHING_ELSE, ALL_OF):
        after = shares(sound_formula(with_swaps(text, "milk for milk powder")))
        assert after["sponge", "water"] > 8 * after["sponge", "milk powder"] > 0


def test_a_little_water_is_made_up_where_there_is_water_already() -> None:
    after = shares(sound_formula(with_swaps(BY_WEIGHT, "butter for sunflower oil")))
    assert ("sponge", "water") not in after


def test_so_much_of_a_stage_follows_what_it_now_weighs() -> None:
    before, after = (
        sound_formula(with_swaps(OF_DOUGH_FLOUR)),
        sound_formula(with_swaps(OF_DOUGH_FLOUR, "butter for sunflower oil")),
    )
    was, now = shares(before), shares(after)
    assert now["dough", "sponge"] < was["dough", "sponge"]
    assert (now["sponge", "white flour"], now["levain", "white flour"]) == (
        was["sponge", "white flour"], was["levain", "white flour"],
    )  # fmt: skip


@every(BREADS, at_least=6)
def test_what_is_brushed_on_and_greased_with_goes_by_the_same_factor(bread: str) -> None:
    after = sound_formula(with_swaps(BREADS[bread], "butter for sunflower oil"))
    (made,) = after.swapped
    assert touching(after)["brush", "sunflower oil"] == 5 * made.factor
    assert touching(after)["grease", "sunflower oil"] == 2 * made.factor
    assert made.said == "also to brush and to grease"


def test_flour_for_dusting_follows_the_flour() -> None:
    after = sound_formula(with_swaps(EVERYTHING_ELSE + LARDER, "white flour for spelt flour"))
    assert touching(after)["dust", "spelt flour"] == 10
    assert after.swapped[0].said == "water follows the flour, also to dust"


def test_a_wash_of_milk_stays_milk_and_that_is_said() -> None:
    after = sound_formula(with_swaps(EVERYTHING_ELSE, "milk for whole milk powder"))
    assert touching(after)["brush", "milk"] == 3
    assert after.swapped[0].said == "to brush it stays milk"


def test_syrup_cannot_be_sprinkled() -> None:
    sugared = EVERYTHING_ELSE.replace("honey", "sugar").replace("brush with milk", "sprinkle with sugar")
    assert touching(sound_formula(with_swaps(sugared, "sugar for brown sugar")))["sprinkle", "brown sugar"] > 0
    assert touching(sound_formula(with_swaps(sugared, "sugar for honey")))["sprinkle", "sugar"] == 3


def test_what_only_touches_the_bread_can_be_swapped_too() -> None:
    text = "\n".join(line for line in EVERYTHING_ELSE.splitlines() if "butter" not in line or " with " in line)
    text = text.replace("    hold back water", "    hold back salt\n    hold back water")
    after = sound_formula(with_swaps(text, "butter for sunflower oil"))
    (made,) = after.swapped
    assert (made.share, made.moved) == (0, ())
    assert set(touching(after)) >= {("brush", "sunflower oil"), ("grease", "sunflower oil")}


def test_two_that_become_one_are_one_line_and_one_name() -> None:
    text = EVERYTHING_ELSE.replace("    butter 6%\n", "    butter 6%\n    sunflower oil 2%\n")
    text = text.replace("hold back butter and salt", "hold back butter, sunflower oil and salt")
    text = text.replace("add butter in 2", "add butter and sunflower oil in 2")
    after = sound_formula(with_swaps(text, "butter for sunflower oil"))
    adds = [[goes.key for goes in step.goes] for step in after.stages[-1].steps if step.verb == "add"]
    assert adds[0] == ["sunflower oil"]


def test_a_culture_is_counted_under_the_flour_that_comes() -> None:
    after = sound_formula(with_swaps(OF_DOUGH_FLOUR + LARDER, "white flour for spelt flour"))
    assert {p.counted_as for s in after.stages for p in s.portions if p.key == "ripe wheat starter"} == {"spelt flour"}


def test_what_only_a_part_of_the_dough_gets_is_exchanged_and_nothing_made_up() -> None:
    text = NUTTY_ROLLS.replace("hazelnuts 12%", "butter 5%")
    after = sound_formula(with_swaps(text, "butter for sunflower oil"))
    (made,) = after.swapped
    (added,) = after.branches[1].added
    assert (added.name, added.share) == ("sunflower oil", Fraction(5, 100) * made.factor)
    assert made.said == "for what is worked into a part of the dough nothing is made up"


MILKY = ("everything else", "what is left", "by weight", "of dough flour")


@every(product(MILKY, ("instant yeast for fresh yeast", "sugar for honey")), at_least=8)
def test_a_dough_of_milk_gives_of_its_milk(bread: str, swap: str) -> None:
    text = BREADS[bread].replace("fresh yeast", "instant yeast").replace("honey", "sugar")
    water = (
        "water 45%",
        "water 450 g",
        "water 60%",
        "what is left of the water",
        "hold back water 4%",
        "add water as needed",
    )
    text = "\n".join(line for line in text.splitlines() if line.strip() not in water) + "\n"
    text = text.replace("milk 25%", "milk 70%").replace("milk 1 cup", "milk 700 g").replace("milk 10%", "milk 70%")
    before, after = sound_formula(with_swaps(text)), sound_formula(with_swaps(text, swap))
    was, now = totals_of(before, builtin()), totals_of(after, builtin())
    (made,) = after.swapped
    assert made.said.endswith("there is not so much water to take off, so there is less milk")
    assert dict(made.moved)["milk"] < 0
    if swap.startswith("sugar"):
        assert (now.water_in_all, now.salt) == (was.water_in_all, was.salt)
    assert flour(after) == 1
