"""How long a step takes."""

from __future__ import annotations

from fractions import Fraction

import pytest
from weighing.kneading import minutes, step

from manchet.formula.bake_events import OPEN, STEAM, BakeEvent
from manchet.formula.model import Range, Step, Who
from manchet.kitchen.model import PLAIN, Kitchen, Mixer
from manchet.timing.jobs.durations import inside, length_of

TWO_HANDS = PLAIN._replace(hands=2)


def lengths(made: Step, pieces: int = 0, kitchen: Kitchen = PLAIN, mixer: Mixer | None = None) -> tuple[object, ...]:
    found = length_of(made, Fraction(pieces), kitchen, kitchen.hands or 1, mixer)
    high = None if found.high is None else found.high / 60
    return found.low / 60, found.planned / 60, high, not found.is_estimate


def test_a_range_is_planned_with_its_middle() -> None:
    assert lengths(step("ripen", 720, 900)) == (720, 810, 900, True)


def test_an_open_end_is_planned_with_the_end_that_is_given() -> None:
    at_least = step("cool")._replace(time=Range(Fraction(24 * 3600), None))
    at_most = step("chill")._replace(time=Range(None, Fraction(3600)))
    assert lengths(at_least) == (1440, 1440, None, True)
    assert lengths(at_most) == (0, 60, 60, True)


@pytest.mark.parametrize(
    ("pieces", "hands", "takes"),
    [(14, 1, Fraction(14, 3)), (120, 1, 40), (120, 2, 20)],
)
def test_work_on_each_piece_grows_with_pieces_and_is_shared_by_hands(pieces: int, hands: int, takes: Fraction) -> None:
    """14 loaves at 20 s are 4 min 40 s, 120 are 40 min."""
    assert lengths(step("shape", each=20), pieces, PLAIN._replace(hands=hands))[1] == takes


def test_the_kitchen_says_how_long_a_verb_takes_a_piece() -> None:
    kitchen = TWO_HANDS._replace(minutes=(("shape", Fraction(30)),))
    assert lengths(step("shape"), 40, kitchen) == (10, 10, 10, True)
    assert lengths(step("shape", 5), 40, kitchen) == (5, 5, 5, True)


def test_what_nobody_timed_takes_what_is_usual_and_says_that_it_is_an_estimate() -> None:
    """By the piece and by the hand: 15 s to shape one; 30 s to add something; half an hour to two hours
    where it is left in the baker's own words."""
    assert lengths(step("shape"), 14) == (Fraction(7, 2), Fraction(7, 2), Fraction(7, 2), False)
    assert lengths(step("shape"), 14, TWO_HANDS)[1] == Fraction(7, 4)
    assert lengths(step("add"), 14) == (Fraction(1, 2), Fraction(1, 2), Fraction(1, 2), False)
    assert lengths(step("do")._replace(who=Who.WAITING)) == (30, 75, 120, False)


def test_pieces_that_nobody_counts_are_one() -> None:
    for hands in (PLAIN, TWO_HANDS):
        assert lengths(step("shape"), 0, hands) == lengths(step("shape"), 1, hands)
    assert lengths(step("shape", each=20), 0) == (Fraction(1, 4), Fraction(1, 4), Fraction(1, 4), False)


def test_a_side_is_baked_twice_and_so_many_at_a_time() -> None:
    """40 rounds, 60-75 s a side, 6 at a time: seven loads of two sides."""
    flat = step("bake")._replace(time=Range(Fraction(60), Fraction(75)), per="side", at_a_time=6)
    assert lengths(flat, 40) == (14, Fraction(63, 4), Fraction(35, 2), True)


def test_turns_take_what_the_mixer_makes_of_them() -> None:
    spiral = Mixer("spiral", slow_turns=Fraction(100), fast_turns=Fraction(200))
    turns = step("mix")._replace(turns=Range(Fraction(700), Fraction(800)))
    assert lengths(turns, mixer=spiral) == (7, Fraction(15, 2), 8, True)
    assert lengths(turns._replace(manner=("fast",)), mixer=spiral)[1] == Fraction(15, 4)
    assert lengths(turns) == (5, 5, 5, False), "of a mixer whose turns nobody knows: an estimate"


def test_folds_stand_inside_their_wait() -> None:
    found = inside(step("ferment", 240, 300, folds=(4, 30)))
    assert [(f.work, f.after / 60, f.number, f.of) for f in found] == [
        ("fold", 30, 1, 4),
        ("fold", 60, 2, 4),
        ("fold", 90, 3, 4),
        ("fold", 120, 4, 4),
    ]


def test_the_turn_of_the_bread_and_the_damper_stand_inside_the_bake() -> None:
    bake = step("bake", 25)._replace(
        turn_after=Fraction(600),
        events=(BakeEvent(STEAM), BakeEvent(OPEN, Fraction(120)), BakeEvent(STEAM, Fraction(900), Fraction(5))),
    )
    assert [(f.work, f.after) for f in inside(bake)] == [("vent open", 120), ("turn bread", 600), ("steam", 900)]
    assert minutes(25) == bake.time
