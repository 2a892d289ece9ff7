"""How hot the floor of a falling oven is when each load goes in."""

from __future__ import annotations

from datetime import datetime
from fractions import Fraction

from loaves import PLAIN_LOAF, vary
from sheets.card_text import notes_of
from works import first_work

from manchet.batch.work import Work
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.card.card import card_of
from manchet.timing.card.values import Card
from manchet.timing.when import When

TEXT = vary(
    PLAIN_LOAF,
    makes="40 loaves at 900 g dough",
    mix="slow 60 min",
    bake="10 min at 240-250 C\n    bake 30 min at 220 C",
)
TEXT += "kitchen House\n  mixer spiral\n    takes 2-20 kg dough\n  oven mother\n    heat wood, falling\n"
FALLS = "    falls 12 C an hour from 280 C\n"
HOME = House()


WHEN = When(datetime(2026, 11, 27, 6, 0), False)


def work(falls: str) -> Work:
    return first_work(TEXT + falls)


def card(falls: str) -> Card:
    return card_of(work(falls), WHEN)


def test_each_load_finds_the_oven_colder() -> None:
    made = card(FALLS)
    loads = [row for row in made.rows if row.floor is not None]
    assert len(loads) == made.mixes == 2
    first, second = (row.floor for row in loads)
    assert first is not None and second is not None
    assert (first.heat, first.least, first.fallen) == (250, 240, False)
    hours = Fraction(int((loads[1].start - loads[0].start).total_seconds()), 3600)
    assert hours > 0
    assert (second.heat, second.fallen) == (250 - 12 * hours, True)


def test_the_card_says_so_beside_the_written_heat() -> None:
    """Two mixes are one job, with a clock for each: what stands beside it is said of the first."""
    said = [note for note in notes_of(timing_card(work(FALLS), WHEN, Issue(), HOME)) if "floor" in note]
    assert said == ["floor under 240 °C: bake longer"]


def test_without_a_curve_nothing_is_said() -> None:
    for falls in ("", "    falls 12 C an hour from 200 C\n"):
        assert all(row.floor is None for row in card(falls).rows)
