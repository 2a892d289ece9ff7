"""The pages of a day with two dishes: what is counted is not weighed, what is no dough is not divided, and each tub says for whom."""

from __future__ import annotations

from functools import cache

from day.market import demo
from sheets.each_form import ISSUE, METRIC

from manchet.day.finding import find_plan
from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.forms.day_oven.ovens_page import ovens_page
from manchet.sheets.forms.day_packing.packing_page import packing_page
from manchet.sheets.forms.day_shift.pages import shift_pages
from manchet.sheets.forms.day_weighing.weigh_up import weigh_up
from manchet.workspace.planning import day_planned


@cache
def lunch() -> DayPlan:
    """Friday lunch of the demo."""
    said = next(plan for plan in demo().plans if plan.name == "Friday lunch")
    of = day_planned(said, demo()).value
    assert of is not None
    planned = find_plan(of.day, with_solver=False).planned
    assert planned is not None
    return DayPlan(said, of, planned)


def test_doughs_alone_are_divided() -> None:
    page = packing_page(lunch(), ISSUE, METRIC)
    assert [(row.bread, row.day) for row in page.divide] == [("Ebb rye", "Thursday"), ("Lamplight tin", "Friday")]
    assert [(row.bread, row.by) for row in page.pack] == [
        ("Herring on rye", "Fri 12:00 – 14:00"),
        ("Sluice toast", "Fri 12:30 – 14:00"),
    ]


def test_slices_are_laid_out_and_not_weighed() -> None:
    bowls = [bowl for sitting in weigh_up(lunch(), ISSUE, METRIC).sittings for bowl in sitting.bowls]
    stages = {(bowl.bread, bowl.stage) for bowl in bowls}
    assert (
        ("Herring on rye", "dough") not in stages and ("slow onions", "") in stages and ("Ebb rye", "dough") in stages
    )
    text = str(shift_pages(lunch(), ISSUE, METRIC))
    assert "lay out Ebb rye 2 slices each" in text and "bean patties" in text and "2 each" in text


def test_what_is_made_ahead_says_for_whom() -> None:
    text = str(shift_pages(lunch(), ISSUE, METRIC))
    assert "Ebb rye: for Herring on rye, Fri 12:00" in text
    assert "shorter Ebb rye" not in text


def test_no_pieces_are_none_and_not_nought() -> None:
    (deck,) = ovens_page(lunch(), ISSUE, METRIC).ovens
    rows = {line.load.bread: line.load.pieces for line in deck.lines if line.load is not None}
    assert rows["celeriac under oil"] == "" and rows["Sluice toast"] == "16 plates"
