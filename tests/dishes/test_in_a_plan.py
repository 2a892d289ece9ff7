"""A dish in a plan: what it is made of is there by then, its breads baked and cold, and its work stands in somebody's shift."""

from __future__ import annotations

from dishes.bread import ALL
from works import bakery_of

from manchet.day.clock import minutes_up
from manchet.workspace.planning import day_planned

PLAN = """
kitchen Row
  hands       2
  oven deck
    hottest     300 C
    holds       10 loaves
    heats in    60 min
  mixer spiral
    takes       2-40 kg dough

plan Lunch
  on 2026-11-28
  Toast                 24 plates, served Sat 12:00-14:00
  hands Ines            Fri 05:00 to Fri 20:00
  hands Tom             Sat 08:00 to Sat 14:00
"""


def test_the_breads_of_a_dish_are_baked_for_it() -> None:
    bakery = bakery_of(ALL + PLAN)
    assert bakery.plans, bakery.diagnostics
    day = day_planned(bakery.plans[0], bakery).value
    assert day is not None
    made = {bread.want.name: bread.want.pieces for bread in day.breads}
    assert [(name, int(number), noun) for name, ((number, noun),) in made.items()] == [
        ("Toast", 24, "plates"),
        ("Plain loaf", 3, "loaves"),
    ]
    assert [work.formula.name for work in day.preparations] == ["bean paste"]
    waits = {wait.what: wait for wait in day.day.waits}
    cooled = waits["Plain loaf"]
    assert cooled.least >= minutes_up(2 * 3600), "cut no sooner than it is cold"
    assert "Toast" in day.day.jobs[cooled.after].breads and "Toast" in day.day.jobs[waits["bean paste"].after].breads


def test_what_is_there_is_not_baked_again() -> None:
    text = (ALL + PLAN).replace("  hands Ines", "  already made          Plain loaf\n  hands Ines")
    bakery = bakery_of(text)
    assert bakery.plans, bakery.diagnostics
    day = day_planned(bakery.plans[0], bakery).value
    assert day is not None and [bread.want.name for bread in day.breads] == ["Toast"]


def test_what_a_dish_takes_comes_on_top_of_what_is_sold() -> None:
    text = (ALL + PLAN).replace("  hands Ines", "  Plain loaf             5 loaves, ready Sat 11:00\n  hands Ines")
    bakery = bakery_of(text)
    assert bakery.plans, bakery.diagnostics
    day = day_planned(bakery.plans[0], bakery).value
    assert day is not None
    (loaves,) = (bread.want.pieces for bread in day.breads if bread.want.name == "Plain loaf")
    assert loaves[0][0] == 8
