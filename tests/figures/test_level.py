"""How high dough stands in a tin: by its sides where they are measured, by its volume else."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, strategies as st

from manchet.batch.model import PieceBatch
from manchet.diagnostics.diagnostic import Place
from manchet.figures.losses.level import NOWHERE, Stands, dough_levels, level_of
from manchet.formula.model import Step, Who
from manchet.kitchen.model import Kitchen, Vessel
from manchet.kitchen.tin_volume import tapered_volume

F = Fraction
BOX = Vessel("tin", "box", F(2500), 1, (F(250), F(100)), (F(250), F(100)), F(100))
SLOPING = Vessel("tin", "long tin", tapered_volume((F(246), F(92)), (F(232), F(78)), F(95)), 1, (F(246), F(92)), (F(232), F(78)), F(95))  # fmt: skip
NO_PLACE = Place("", 1, 1, 1, 1)


def test_a_box_by_hand() -> None:
    """1100 g are a litre, which stands 40 mm high on 250 x 100 mm; 15 mm under a rim of 100 mm is 85 mm high."""
    found = level_of(Stands("tin", BOX, F(1100)), below_rim=F(15))
    assert (found.before, found.after, found.depth) == (F(40, 100), F(85, 100), F(100))
    assert level_of(Stands("tin", BOX, F(1100)), times=F(2)).after == F(80, 100)
    assert level_of(Stands("tin", BOX, F(1100)), times=F(3)).after == F(120, 100), "20 mm above the rim"


def test_what_is_said_of_the_volume_counts_before_the_sides() -> None:
    """Rounded corners: it holds 2000 ml, though its sides say 2500. A litre is half of it."""
    assert level_of(Stands("tin", BOX._replace(millilitres=F(2000)), F(1100))).before == F(1, 2)


def test_a_tin_that_nobody_measured_is_told_by_its_volume_alone() -> None:
    found = level_of(Stands("tin", Vessel("tin", "old", F(2000)), F(1100)), below_rim=F(15))
    assert (found.before, found.after, found.depth) == (F(1, 2), None, None)
    assert level_of(Stands("tin", Vessel("tin", "old", F(2000)), F(1100)), times=F("1.8")).after == F(9, 10)


@pytest.mark.parametrize("stands", [NOWHERE, Stands("tin"), Stands("tin", BOX), Stands("tin", None, F(900)),
                                    Stands("basket", Vessel("basket", "round"), F(900))])  # fmt: skip
def test_what_is_not_known_is_not_made_up(stands: Stands) -> None:
    assert level_of(stands).before is None and level_of(stands, times=F(2)).after is None


@given(st.integers(50, 3000), st.integers(50, 3000))
def test_more_dough_stands_higher_and_fills_what_it_should(one: int, other: int) -> None:
    less, more = (level_of(Stands("tin", SLOPING, F(grams))).before for grams in sorted((one, other)))
    assert less is not None and more is not None and 0 < less <= more
    if more < 1:
        high = more * 95
        rim = tuple(f + (r - f) * high / 95 for r, f in zip((F(246), F(92)), (F(232), F(78)), strict=True))
        volume = tapered_volume((rim[0], rim[1]), (F(232), F(78)), high)
        wanted = F(max(one, other)) / F("1.1")
        assert wanted <= volume < wanted + 23, "to the next millimetre, of 246 x 92 at most"


def step(verb: str, where: str = "", *manner: str) -> Step:
    return Step(verb, Who.HANDS, NO_PLACE, where=("in", where) if where else None, manner=manner)


def test_where_the_pieces_stand_step_by_step() -> None:
    kitchen = Kitchen("House", vessels=(BOX, Vessel("basket", "wicker"), Vessel("tray", "black tray")))
    steps = [step("shape"), step("place", "Box", "seam down"), step("prove"), step("turn out"), step("bake"),
             step("place", "wicker", "seam up"), step("place", "bread pan"), step("place", "black tray")]  # fmt: skip
    loaf = PieceBatch(F(2), "loaves", F(900), None, "")
    found = dough_levels(steps, "", [loaf], kitchen)
    assert [one.word for one in found] == ["", "tin", "tin", "", "", "basket", "tin", ""]
    assert [one.seam for one in found] == ["", "down", "down", "", "", "up", "", ""]
    assert found[2].vessel == BOX and found[6].vessel is None and {one.grams for one in found} == {F(900)}


def test_the_tin_that_the_head_names_and_pieces_of_two_weights() -> None:
    kitchen = Kitchen("House", vessels=(BOX,))
    tinned = PieceBatch(F(2), "loaves", F(900), None, "box")
    assert dough_levels([step("prove")], "", [tinned], kitchen)[0] == Stands("tin", BOX, F(900))
    rolls = PieceBatch(F(9), "rolls", F(60), None, "")
    assert dough_levels([step("prove")], "", [tinned, rolls], kitchen)[0] == Stands(), "nobody knows which is meant"
    assert dough_levels([step("prove")], "roll", [tinned, rolls], kitchen)[0] == Stands(grams=F(60))
