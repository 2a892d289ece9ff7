"""How many lie on an oven's floor: long pieces lengthways or across, whichever are more, and never through too small a door."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given, strategies as st

from manchet.figures.oven.floor import GAP, FloorLoad, Footprint, fullest, places
from manchet.kitchen.model import Floor


def floor(across: int, deep: int, is_round: bool = False) -> Floor:
    return Floor(Fraction(across), Fraction(deep), is_round)


def piece(wide: int, deep: int) -> Footprint:
    return Footprint(Fraction(wide), Fraction(deep))


@pytest.mark.parametrize(
    ("oven", "door", "number", "lies"),
    [
        (floor(590, 900), None, 5, (100, 600)),  # one row of five with their ends to the door
        (floor(900, 600), None, 7, (100, 600)),  # the same floor from its long side
        (floor(640, 700), None, 6, (600, 100)),  # seven deep and 640 wide: six across, five lengthways
        (floor(640, 700), 500, 5, (100, 600)),  # across none goes through the door
        (floor(640, 550), None, 4, (600, 100)),  # lengthways none fits at all
        (floor(640, 550), 90, 0, (100, 600)),
    ],
)
def test_sticks_lengthways_or_across(oven: Floor, door: int | None, number: int, lies: tuple[int, int]) -> None:
    load = fullest(oven, piece(100, 600), None if door is None else Fraction(door))
    assert (len(load.lie), load.piece) == (number, lies)


SIDES = st.integers(60, 700)


@given(st.integers(300, 2500), st.integers(300, 2500), st.booleans(), SIDES, SIDES)
def test_the_fullest_is_no_less_than_either_way_and_nothing_overlaps(
    across: int, deep: int, is_round: bool, wide: int, long: int
) -> None:
    oven = floor(across, across if is_round else deep, is_round)
    load = fullest(oven, piece(wide, long))
    assert len(load.lie) >= max(
        len(places(oven, Fraction(wide), Fraction(long), GAP)), len(places(oven, Fraction(long), Fraction(wide), GAP))
    )
    assert_apart(load, oven)


def assert_apart(load: FloorLoad, oven: Floor) -> None:
    for one, other in combinations(load.lie[:40], 2):
        aside, behind = abs(one.x - other.x), abs(one.y - other.y)
        assert aside >= load.piece.wide + GAP or behind >= load.piece.deep + GAP
    for one in load.lie:
        assert load.piece.wide / 2 <= one.x <= oven.across - load.piece.wide / 2
        assert load.piece.deep / 2 <= one.y <= oven.deep - load.piece.deep / 2
