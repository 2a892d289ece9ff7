"""A wait in a room that is not as warm as the file has it: the card says about how long that takes."""

from datetime import datetime
from fractions import Fraction

import pytest
from loaves import POOLISH_LOAF, vary
from sheets.card_text import notes_of
from works import first_work

from manchet.batch.work import Work
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.card.card import card_of
from manchet.timing.card.values import Card
from manchet.timing.when import When

LOAF = vary(
    POOLISH_LOAF,
    makes="12 loaves at 500 g dough",
    mix_by_hand="3 min",
    ripen="covered {ripe}",
    mix_slow="5 min to 25 C",
    ferment="covered 60 min at 25 C{place}",
    prove="covered 60-70 min at 27 C{place}",
)
LOAF += """
kitchen House
  air {air} C
{more}
"""


WHEN = When(datetime(2026, 11, 27, 17, 0), False)


def work(ripe: str = "12-14 h at 20 C", air: int = 24, more: str = "", place: str = " in cupboard") -> Work:
    return first_work(LOAF.format(ripe=ripe, air=air, more=more, place=place))


def card(ripe: str = "12-14 h at 20 C", air: int = 24, more: str = "", place: str = " in cupboard") -> Card:
    return card_of(work(ripe, air, more, place), WHEN)


def room_notes(made: Work) -> list[str]:
    return [note for note in notes_of(timing_card(made, WHEN, Issue(), House())) if "room " in note]


def test_a_warm_room_by_hand() -> None:
    """20 C 0.2198 an hour, 24 C 0.2903: 12-14 h are 9.1-10.6 h."""
    (row,) = [row for row in card().rows if row.in_room is not None]
    assert row.in_room is not None and row.in_room.celsius == 24 and row.in_room.seconds is not None
    low, high = row.in_room.seconds
    assert low is not None and high is not None
    assert float(low / 3600) == pytest.approx(12 * 0.2198 / 0.2903, abs=0.02)
    assert float(high / 3600) == pytest.approx(14 * 0.2198 / 0.2903, abs=0.02)
    assert room_notes(work()) == ["room 24 °C: about 9–11 h"]


@pytest.mark.parametrize(
    ("ripe", "air", "more"),
    [
        ("12-14 h at 20 C", 21, ""),  # near enough
        ("12-14 h at 20 C in cellar", 24, ""),  # it stands elsewhere
        ("12-14 h at 24 C falling to 18 C", 27, ""),
        ("12-14 h at 20 C", 24, "  prover cupboard\n    keeps 20 C"),  # the house has such a place
        ("12-14 h at 10 C", 20, ""),  # the model is silent
    ],
)
def test_silent(ripe: str, air: int, more: str) -> None:
    assert room_notes(work(ripe, air, more)) == []


def test_one_figure_stays_one() -> None:
    (row,) = [row for row in card("12 h at 20 C", 16).rows if row.in_room is not None]
    assert row.in_room is not None and row.in_room.seconds is not None
    assert row.in_room.seconds.low == row.in_room.seconds.high
    assert row.in_room.seconds.low is not None and row.in_room.seconds.low > Fraction(12 * 3600)


def test_bulk_and_proof_are_told_too_and_how_far_it_may_come() -> None:
    """A dough keeps its own warmth a while: at 18 C no longer than so long, at 32 C no sooner."""
    cold, warm = room_notes(work("12 h at 18 C", 18, place="")), room_notes(work("12 h at 32 C", 32, place=""))
    assert cold == [
        "room 18 °C: up to about 105 min",
        "room 18 °C: up to about 2 h",
    ]
    assert [text.split(": ")[1][:10] for text in warm] == ["from about", "from about"]


def test_in_a_room_too_cold_to_be_told_a_place_is_asked_for() -> None:
    needs = [text for text in room_notes(work("12 h at 20 C", 8, place="")) if "find a place at" in text]
    assert [text.split("at ")[-1] for text in needs] == ["20 °C", "25 °C", "27 °C"]


@pytest.mark.parametrize("more", ["  prover box\n    keeps 26 C", "  prover box"])
def test_a_prover_is_the_place_that_is_meant(more: str) -> None:
    assert room_notes(work("12 h at 18 C", 18, more, place="")) == []
