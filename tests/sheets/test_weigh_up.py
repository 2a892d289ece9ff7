"""The weigh-up of a planned day: the very rows of the prep sheets, in the order they are needed."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from day.market import market, number_of, with_starts
from sheets.each_form import ISSUE, METRIC, US

from manchet.batch.weighing import weighings
from manchet.day.pages.bowls import SITTING, sittings
from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.forms.day_weighing.view import DayBowl, WeighUp
from manchet.sheets.forms.day_weighing.weigh_up import weigh_up
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import NBSP


def page(plan: DayPlan | None = None, house: House = METRIC) -> WeighUp:
    return weigh_up(plan or market(), ISSUE, house)


def bowls(plan: DayPlan | None = None, house: House = METRIC) -> list[DayBowl]:
    return [bowl for sitting in page(plan, house).sittings for bowl in sitting.bowls]


@pytest.mark.parametrize("house", [METRIC, US], ids=["grams", "pounds"])
def test_every_weight_is_that_of_the_prep_sheet(house: House) -> None:
    found = bowls(house=house)
    for bread in market().of.breads:
        blocks = prep_sheet(bread.work, ISSUE, house, {}).blocks
        rows = {(row.name, row.weight, row.unit, row.letter) for block in blocks for row in (*block.rows, *block.aside)}
        mine = {
            (row.name, row.weight, row.unit, row.letter)
            for bowl in found
            if bowl.bread == bread.want.name
            for row in (*bowl.rows, *bowl.later)
        }
        assert mine and mine <= rows, bread.want.name
        stages = [stage for stage in bread.work.batch.stages if stage.stage.name not in ("toasted seeds",)]
        assert len([bowl for bowl in found if bowl.bread == bread.want.name]) == len(stages), bread.want.name


def test_bowls_stand_in_the_order_they_are_begun() -> None:
    plan = market()
    found = sittings(plan)
    wanted = [bowl.wanted[0] for sitting in found for bowl in sitting.bowls]
    assert wanted == sorted(wanted)
    for sitting in found:
        assert all(bowl.wanted[0] - sitting.begins <= SITTING for bowl in sitting.bowls)
    for one, other in pairwise(found):
        assert one.shift != other.shift or other.begins - one.begins > SITTING


def test_a_job_that_moves_takes_its_bowl_with_it() -> None:
    (before,) = [bowl for bowl in bowls() if (bowl.bread, bowl.stage) == ("Gangway loaf", "poolish")]
    start = market().begins(number_of(market(), "Gangway loaf/poolish/weigh"))
    moved = with_starts(market(), {"Gangway loaf/poolish/weigh": start + 4})
    (after,) = [bowl for bowl in bowls(moved) if (bowl.bread, bowl.stage) == ("Gangway loaf", "poolish")]
    assert (before.clocks, after.clocks) == (("08:50",), ("08:54",)) and before.rows == after.rows


def test_what_goes_in_later_is_lettered_and_not_in_the_bowl_yet() -> None:
    (tern,) = [bowl for bowl in bowls() if (bowl.bread, bowl.stage) == ("Tern loaf", "dough")]
    assert [(row.letter, row.name) for row in tern.later] == [
        ("A", "salt"),
        ("A", "instant yeast"),
        ("B", "millet porridge"),
    ]
    assert tern.holds.startswith("bowl ") and tern.holds.endswith("before A, B")


def test_the_store_is_the_sum_of_what_is_weighed() -> None:
    flours: dict[str, Fraction] = {}
    for bread in market().of.breads:
        for table in weighings(bread.work).value:
            for line in table.lines:
                if line.weighed.portion.is_flour and table.making.stage.stage.name != "toasted seeds":
                    name = line.weighed.portion.name
                    flours[name] = flours.get(name, Fraction(0)) + line.shown * table.making.times
    assert page().store[0] == f"white flour {round(flours['white flour'] / 1000, 2).__float__():g}{NBSP}kg"
    assert len(page().store) == len(flours)
