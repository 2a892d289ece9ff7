"""What a formula says of itself: its dough, the way of each bread, every step once, what its kind is."""

from __future__ import annotations

from manchet.formula.model import Formula
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

HEAD = """\
formula Pair
  kind hearth loaf
  makes 10 loaves at 500 g dough
  makes 20 rolls at 80 g dough
  overall
    white flour 100%
    water 68%
    salt 2%
    instant yeast 0.6%
  poolish with 20% of all flour
    white flour 100%
    water 100%
    instant yeast 0.1%
    mix by hand 3 min
    ripen 12 h at 20 C
  dough
    poolish
    everything else
    mix slow 4 min to 25 C
    divide
"""
PARTED = """\
    for the loaf
      bake 30 min at 230 C, steam
    for the rolls
      bake 18 min at 230 C, steam
"""


def formula(text: str) -> Formula:
    bakery = read((SourceText("case.bake", text),))
    (found,) = bakery.formulas
    return found


def verbs(steps: tuple) -> list[str]:  # type: ignore[type-arg]
    return [step.verb for step in steps]


def test_a_dough_that_is_not_parted_goes_one_way() -> None:
    plain = formula(HEAD + "    bake 30 min at 230 C, steam\n")
    assert not plain.is_parted
    assert [(noun, verbs(steps)) for noun, steps in plain.ways] == [("loaves", ["mix", "divide", "bake"])]
    assert plain.way_of("rolls") == plain.dough.steps


def test_each_part_goes_its_own_way_from_the_first_mix_on() -> None:
    pair = formula(HEAD + PARTED)
    assert [noun for noun, _ in pair.ways] == ["loaf", "rolls"]
    assert [verbs(steps) for _, steps in pair.ways] == [["mix", "divide", "bake"]] * 2
    assert verbs(pair.steps) == ["mix", "ripen", "mix", "divide", "bake", "bake"], "every step once"


def test_the_pieces_of_a_noun_find_their_way_in_the_singular_and_in_the_plural() -> None:
    pair = formula(HEAD + PARTED)
    assert pair.way_of("loaves")[-1].time != pair.way_of("roll")[-1].time
    assert pair.way_of("wreaths") == pair.dough.steps


def test_what_is_added_to_all_of_the_dough_parts_nothing() -> None:
    nuts = formula(HEAD + "    add hazelnuts 10% of the dough\n    bake 30 min at 230 C, steam\n")
    assert nuts.branches and not nuts.is_parted
    assert [noun for noun, _ in nuts.ways] == ["loaves"]
    assert [noun for noun, _ in formula(HEAD + "    add hazelnuts 10% of the dough\n" + PARTED).ways] == [
        "loaf",
        "rolls",
    ]


def test_a_stage_is_found_by_its_key_and_the_dough_is_the_last() -> None:
    pair = formula(HEAD + PARTED)
    assert pair.stage("poolish") is pair.stages[0]
    assert pair.dough is pair.stage("dough")
    assert pair.stage("white flour") is None and pair.stage("") is None


def test_a_preparation_is_no_bread_and_its_only_stage_is_its_dough() -> None:
    wash = formula("preparation egg wash\n  kind soft\n  eggs 500 g\n  milk 100 g\n  whisk 2 min\n")
    assert verbs(wash.dough.steps) == ["whisk"]
    assert not wash.bread.risen and formula(HEAD + PARTED).bread.hearth
