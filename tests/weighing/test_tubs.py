"""What one stage hands on to another, as printed: a tub holds what is taken of it, and what all goes on is read as its tub."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given, settings, strategies as st
from works import bakery_of, first_work, works

from manchet.batch.order import Order
from manchet.batch.scales import System
from manchet.batch.tubs import goes_whole
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work

RECIPES = Path(__file__).parents[2] / "recipes"

POOLISH = """
formula Quay loaf
  kind hearth loaf
  makes 2 loaves at {grams} g dough

  overall
    white flour          100%
    water                 68%
    salt                   2%
    instant yeast          0.45%

  poolish with {share}% of all flour
    white flour          100%
    water                100%
    instant yeast          0.1%
    mix by hand 3 min to 23 C
    ripen covered 12-14 h at 20 C

  dough
    poolish
    everything else
    mix by hand 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C
    cool 2 h

kitchen House
  scale bench
    reads {reads} g
    up to 30 kg
  scale fine
    reads 0.1 g
    up to 500 g
  mixer spiral
    takes 2-{takes} kg dough
"""


def text(grams: int = 901, share: int = 31, reads: int = 1, takes: int = 30, mix: str = "mix by hand 8 min") -> str:
    return POOLISH.format(grams=grams, share=share, reads=reads, takes=takes).replace("mix by hand 8 min", mix)


def grams_taken(source: Table, tables: tuple[Table, ...]) -> Fraction:
    key = source.making.stage.stage.key
    return sum(
        (
            line.reading.grams * table.making.times
            for table in tables
            for line in table.lines
            if line.weighed.portion.stage == key
        ),
        Fraction(0),
    )


def lacking(work: Work, system: System) -> list[str]:
    """The stages that hold less than is taken of them, as printed; one that is used whole is taken as it is."""
    tables = weighings(work, system).value
    found = []
    for table in tables:
        stage = table.making.stage
        holds = table.total * table.making.times + stage.out - stage.into
        kept = sum((grams for _, grams in stage.kept), Fraction(0))
        if grams_taken(table, tables) and not goes_whole(table, tables) and holds < grams_taken(table, tables) + kept:
            found.append(f"{work.formula.name}: {stage.stage.name}")
    return found


@pytest.mark.parametrize("system", System)
def test_every_tub_of_the_demo_holds_what_is_taken_of_it(system: System) -> None:
    bakery = bakery_of("\n".join(file.read_text(encoding="utf-8") for file in sorted(RECIPES.rglob("*.bake"))))
    found = works(bakery)
    assert len(found) >= 20
    assert [name for work in found for name in lacking(work, system)] == []


@given(
    grams=st.integers(400, 1200), share=st.integers(10, 60), reads=st.sampled_from((1, 2, 5)),
    pieces=st.integers(1, 90), system=st.sampled_from(System),
)  # fmt: skip
@settings(max_examples=60, deadline=None)
def test_a_poolish_for_several_mixes_holds_what_they_take(
    grams: int, share: int, reads: int, pieces: int, system: System
) -> None:
    work = first_work(text(grams, share, reads, 12, "mix slow 8 min"), Order(pieces=((Fraction(pieces), "loaves"),)))
    assert lacking(work, system) == []


@pytest.mark.parametrize("grams", [901, 905, 909, 913])
def test_what_all_goes_into_the_dough_is_weighed_as_its_tub(grams: int) -> None:
    """655 g stood on the sheet and 656 g on the handout, of the one poolish."""
    poolish, dough = weighings(first_work(text(grams))).value
    (line,) = [line for line in dough.lines if line.weighed.portion.stage]
    assert line.reading.grams == round(poolish.total)
