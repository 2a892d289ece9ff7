"""Plans in a folder: which files they draw on, and that what is remembered of them is never stale."""

from __future__ import annotations

from collections.abc import Mapping

from loaves import PLAIN_LOAF

from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.wanted_by_plans import wanted_by_plans

FILES = {
    "house.bake": "kitchen House\n  air 22 C\n",
    "loaf.bake": PLAIN_LOAF,
    "rye.bake": PLAIN_LOAF.replace("Plain loaf", "Ebb rye, dark"),
    "other.bake": PLAIN_LOAF.replace("Plain loaf", "Tern loaf"),
    "orders.bake": "order Quay cafe\n  every Sat\n  Ebb rye, dark 4 loaves\n",
    "plans/day.bake": (
        "kitchen House\n  busy 20%\n"
        "plan Market\n  on 2026-11-28\n  orders\n  van leaves 06:00 with Quay cafe\n  Plain loaf 12 loaves, ready 06:00\n"
    ),
}


def opened(texts: Mapping[str, str]) -> OpenBakery:
    return OpenBakery(files=[Raw(path, text.encode()) for path, text in texts.items()])


def test_a_plan_draws_on_what_it_names_and_on_the_standing_orders() -> None:
    held = opened(FILES)
    drawn = {"loaf.bake", "rye.bake", "orders.bake", "plans/day.bake"}
    assert wanted_by_plans(held.files, {"plans/day.bake"}) == drawn
    assert wanted_by_plans(held.files, {"loaf.bake"}) == frozenset()
    assert held.needed({"plans/day.bake"}) == drawn | {"house.bake"}
    assert held.needed({"loaf.bake"}) == {"loaf.bake", "house.bake"}


def test_a_plan_read_alone_is_the_plan_read_with_all() -> None:
    held = opened(FILES)
    assert held.read(["plans/day.bake"]).plans == held.read().plans != ()
    assert held.read(["loaf.bake"]).plans == ()
    slip = {**FILES, "plans/day.bake": FILES["plans/day.bake"].replace("Plain loaf", "Turn loaf")}
    alone, all_of_it = opened(slip).read(["plans/day.bake"]), opened(slip).read()
    assert alone.mistakes == all_of_it.mistakes
    assert [(one.name, one.fixes[0].title) for one in alone.mistakes] == [("no-such-bread", "write `Tern loaf`")]


def test_a_kitchen_for_plans_alone_is_none_of_the_bakery() -> None:
    held = opened(FILES)
    assert [(path, block.name) for path, block in held.shared] == [("house.bake", "House")]
    assert held.read().plans[0].kitchen.busy > 0
    assert held.read().kitchens[0].busy == 0


def test_what_a_plan_draws_on_changes_what_is_said_of_it() -> None:
    held = opened(FILES)
    assert held.reports(["plans/day.bake"]) == ()
    rolls = FILES["loaf.bake"].replace("loaves at", "rolls at")
    held.update("loaf.bake", rolls.encode())
    assert [one.name for one in held.reports(["plans/day.bake"])] == ["no-such-piece"]
    held.update("loaf.bake", None)
    held.update("orders.bake", FILES["orders.bake"].replace("4 loaves", "4 rolls").encode())
    assert [one.place.path for one in held.reports(["plans/day.bake"])] == ["orders.bake"]
