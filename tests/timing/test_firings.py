"""When an oven that falls is fired, and when its fire is out: the timing card tells the same hours as the oven card."""

from __future__ import annotations

from datetime import datetime, timedelta
from fractions import Fraction

import pytest
from loaves import PLAIN_LOAF, vary
from sheets.card_text import said_of
from works import first_work

from manchet.batch.work import Work
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.loading_order import loading_order
from manchet.formula.model import Range
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.card.card import card_of
from manchet.timing.card.moments import Moment, moments_of
from manchet.timing.card.values import Card, CardRow
from manchet.timing.when import When

TEXT = vary(PLAIN_LOAF, makes="20 loaves at 900 g dough", mix="slow 10 min", bake="{bake}")
TEXT += """
kitchen House
  oven mother
    heat wood, falling
    hottest 330 C
    heats in {heats}
    falls 30 C an hour from 320 C
    falls 12 C an hour from 250 C
"""


WHEN = When(datetime(2026, 11, 27, 6, 0), False)


def work(bake: str = "40 min at 240-250 C", heats: str = "3 h", text: str = TEXT) -> Work:
    return first_work(text.format(bake=bake, heats=heats))


def card(bake: str = "40 min at 240-250 C", heats: str = "3 h", text: str = TEXT) -> Card:
    return card_of(work(bake, heats, text), WHEN)


def only(made: Card, job: str) -> CardRow:
    (row,) = (row for row in made.rows if row.job == job)
    return row


def first_bake(made: Card) -> CardRow:
    return next(row for row in made.rows if row.job == "step" and row.step is not None and row.step.verb == "bake")


def test_it_is_lit_for_the_heat_of_the_bake_and_no_more() -> None:
    """A loaf at 240 to 250 C needs no 320 C, nor the 2 h 20 that the oven takes to fall from there; 3 h is the longest that a
    fire to less than its hottest takes."""
    made = card()
    lit, out, bake = only(made, "preheat"), only(made, "fire out"), first_bake(made)
    assert (lit.end - lit.start, lit.seconds) == (timedelta(hours=3), Range(None, Fraction(3 * 3600)))
    assert lit.end == out.start == out.end == bake.start
    assert lit.celsius == out.celsius == Range(Fraction(250), Fraction(250))
    (told,) = (item for item in made.before_you_go if item.what == "set oven")
    assert (told.celsius, told.at) == (Fraction(250), lit.start)
    lane = next(lane for lane in made.lanes if lane.what == "oven")
    assert [bar.kind for bar in lane.bars][:2] == ["preheat", "waiting"]


def test_the_fire_is_out_before_the_first_loaf_is_cut_at_the_door() -> None:
    made = card(text=TEXT.replace("    bake {bake}\n", '    score "a cross" 6 s each\n    bake {bake}\n'))
    out, bake = only(made, "fire out"), first_bake(made)
    assert out.start == only(made, "preheat").end == bake.start - timedelta(minutes=2)
    moment = next(m for m in moments_of(made.rows) if m.start == out.start)
    assert isinstance(moment, Moment)
    assert [line.rows[0].job for line in moment.lines] == ["fire out", "step"]


RISES = TEXT.replace("    bake {bake}\n", "    bake {bake}\n    bake 10 min at 270-280 C\n")


@pytest.mark.parametrize(("bake", "text"), [("40 min at 30 C rising to 210 C", TEXT), ("40 min at 220 C", RISES)])
def test_what_rises_is_baked_while_the_fire_burns(bake: str, text: str) -> None:
    made = card(bake, text=text)
    assert not any(row.job == "fire out" for row in made.rows)
    assert only(made, "preheat").end == first_bake(made).start
    assert first_bake(made).floor is None, "nothing is said of a floor that falls"
    assert not [
        text for _, text in said_of(timing_card(work(bake, text=text), WHEN, Issue(), House())) if "floor" in text
    ]


def test_what_bakes_beside_the_fire_wants_no_heat_and_the_fire_burns_for_it() -> None:
    made = card("40 min in mother, beside the fire")
    lit = only(made, "preheat")
    assert not any(row.job == "fire out" for row in made.rows)
    assert (lit.end, lit.celsius, lit.seconds) == (first_bake(made).start, None, Range(None, Fraction(3 * 3600)))


def test_what_rises_beside_the_fire_goes_in_as_it_is_lit() -> None:
    made = card("40 min at 30 C rising to 210 C, beside the fire")
    lit = only(made, "preheat")
    assert lit.start == lit.end == first_bake(made).start


def test_the_fire_burns_until_what_stands_beside_it_is_out() -> None:
    dried = TEXT.replace("    cool 2 h\n", "    cool 3 h\n    bake 1 h at 100-120 C\n    cool 1 h\n")
    made = card("40 min at the mouth", text=dried)
    assert only(made, "fire out").start >= first_bake(made).end


def test_after_what_rises_the_fire_is_out_for_what_falls() -> None:
    dried = TEXT.replace("    cool 2 h\n", "    cool 3 h\n    bake 1 h at 100-120 C\n    cool 1 h\n")
    made = card("40 min at 30 C rising to 210 C", text=dried)
    rises, dries = (row for row in made.rows if row.job == "step" and row.step is not None and row.step.verb == "bake")
    assert only(made, "fire out").start >= rises.end
    assert dries.floor is not None and 100 <= dries.floor.heat <= 120


@pytest.mark.parametrize("bake", ("40 min at 240-250 C", "20 min at 300 C", "10 min at 310-320 C", "3 h at 160-180 C"))
def test_alone_the_hours_are_those_of_the_oven_card(bake: str) -> None:
    made, loaf = card(bake), work(bake)
    plan = loading_order(list(bakes_of(loaf)), loaf.kitchen.ovens[0])
    into = plan.loads[0].into
    hours = Fraction(int((first_bake(made).start - only(made, "fire out").start).total_seconds()), 3600)
    assert abs(hours - into.hours) <= Fraction(1, 60)
    floor = first_bake(made).floor
    assert floor is not None and abs(floor.heat - into.celsius) <= 1 and not floor.fallen


def test_the_line_says_how_hot_and_how_long() -> None:
    said = [text for _, text in said_of(timing_card(work(), WHEN, Issue(), House()))]
    assert "Light the oven to 250 °C, at most 3 h" in said
    assert "Fire out, floor 250 °C" in said
    hottest = [text for _, text in said_of(timing_card(work("20 min at 320 C"), WHEN, Issue(), House()))]
    assert "Light the oven to 320 °C, 3 h" in hottest


def test_what_wants_the_hottest_goes_in_when_the_fire_is_out() -> None:
    made = card("10 min at 310-330 C")
    assert only(made, "fire out").start == first_bake(made).start
    said = [text for _, text in said_of(timing_card(work("10 min at 310-330 C"), WHEN, Issue(), House()))]
    assert "Fire out, floor 320 °C" in said


def test_what_wants_more_than_the_curve_is_baked_on_the_fire() -> None:
    made = card("5 min at 340-350 C")
    assert not any(row.job == "fire out" for row in made.rows)
    lit = only(made, "preheat")
    assert lit.end == first_bake(made).start
    assert lit.celsius is not None and (lit.celsius.low, lit.celsius.high) == (340, 350)


def test_nobody_knows_how_long_it_heats() -> None:
    made = card(text=TEXT.replace("    heats in {heats}\n", ""))
    assert not any(row.job == "preheat" for row in made.rows)
    assert first_bake(made).start == only(made, "fire out").start


DRIED = TEXT.replace("    cool 2 h\n", "    cool 5 h\n    bake 1 h at {dry}\n    cool 1 h\n")


def test_what_is_still_warm_enough_is_not_lit_anew() -> None:
    """Nine hours after the fire is out the floor is at 170 C: it dries, and bakes nothing."""
    for dry, fires in (("100-120 C", 1), ("220-230 C", 2)):
        made = card(text=DRIED.replace("{dry}", dry))
        assert sum(row.job == "fire out" for row in made.rows) == fires, dry


def test_another_bake_of_the_fire_must_not_find_it_too_cold() -> None:
    """The seeds may go in at 170 C, 8 h 50 after hour 0; the bread an hour and a half later wants 240: they go in hotter."""
    seeds = "  soaker toasted\n    all of the sunflower seeds\n    roast 20 min at 150-170 C\n    cool 1 h\n"
    text = (
        TEXT.replace("ferment covered 2 h", "ferment 30 min")
        .replace("  dough\n", seeds + "  dough\n    toasted\n")
        .replace("    salt  ", "    sunflower seeds 5%\n    salt  ")
    )
    made = card(text=text)
    bake, out = first_bake(made), only(made, "fire out")
    assert bake.floor is not None and bake.floor.heat >= bake.floor.least - 1
    assert out.start < bake.start and out.celsius is not None and out.celsius.likely > 250
