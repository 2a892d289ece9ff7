"""A griddle, a pan or a pot is filled round after round: the time of all of them stands on the card, or that it is of one."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from sheets.card_text import notes_of
from works import first_work

from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.card.card import card_of
from manchet.timing.card.values import CardRow
from manchet.timing.when import When

WHEN = When(datetime(2026, 11, 27, 6, 0), False)
TEXT = """\
formula Griddle cakes
  kind batter
  makes {makes}
  overall
    white flour 100%
    water 110%
    salt 1.6%
    instant yeast 0.8%
  dough
    everything else
    mix by hand 4 min
    ferment covered 90 min at 26 C
    {cooks}
kitchen House
  air 21 C
{things}"""
IRON = "  griddle iron\n    holds 4 rounds\n"
KETTLE = "  pot kettle\n    holds 12 rounds\n"
ONE = "one round; how many there are is not said"


def cooked(cooks: str, things: str = "", makes: str = "45 rounds at 60 g dough") -> tuple[CardRow, list[str]]:
    work = first_work(TEXT.format(cooks=cooks, things=things, makes=makes))
    verb = cooks.split()[0]
    row = next(row for row in card_of(work, WHEN).rows if row.step is not None and row.step.verb == verb)
    return row, [note for note in notes_of(timing_card(work, WHEN, Issue(), House())) if "round" in note]


@pytest.mark.parametrize(
    ("cooks", "things", "minutes", "said"),
    [
        ("griddle 2 min a side at 220 C, 4 at a time", "", 48, ["12 rounds of 4"]),
        ("griddle 2 min a side at 220 C", IRON, 48, ["12 rounds of 4"]),
        ("griddle 2 min a side at 220 C on iron", IRON, 48, ["12 rounds of 4"]),
        ("griddle 2 min a side at 220 C, 9 at a time", IRON, 20, ["5 rounds of 9"]),
        ("griddle 2 min a side at 220 C", IRON + "    count 2\n", 24, ["6 rounds of 8"]),
        ("griddle 2 min a side at 220 C", "  griddle iron\n    holds 60 rounds\n", 4, []),
        ("boil 1 min in kettle", KETTLE, 4, ["4 rounds of 12"]),
        ("fry 100 s a side at 175 C, 5 at a time", "", 30, ["9 rounds of 5"]),
    ],
)
def test_the_time_is_of_all_rounds(cooks: str, things: str, minutes: int, said: list[str]) -> None:
    """45 pieces: 12 rounds of four minutes are 48."""
    row, notes = cooked(cooks, things)
    assert (row.end - row.start, notes) == (timedelta(minutes=minutes), said)


@pytest.mark.parametrize(
    ("cooks", "things", "makes"),
    [
        ("griddle 90 s a side at 200 C, 4 at a time", "", "6 kg dough"),
        ("griddle 90 s a side at 200 C", IRON, "6 kg dough"),
        ("griddle 90 s a side at 200 C", "", "45 rounds at 60 g dough"),
        ("griddle 90 s a side at 200 C", IRON + "  griddle plate\n    holds 6 rounds\n", "45 rounds at 60 g dough"),
        ("fry 90 s a side at 175 C", "", "45 rounds at 60 g dough"),
    ],
)
def test_where_nobody_says_how_many_the_card_says_that_it_is_one_round(cooks: str, things: str, makes: str) -> None:
    row, notes = cooked(cooks, things, makes)
    assert (row.end - row.start, notes) == (timedelta(minutes=3), [ONE])


def test_a_single_piece_is_one_round() -> None:
    assert cooked("griddle 90 s a side at 200 C", makes="1 round at 60 g dough")[1] == []
