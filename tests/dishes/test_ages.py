"""How old the parts of a dish may be: told where the file alone tells, and where the order's day and the part's own day do."""

from __future__ import annotations

import pytest
from works import bakery_of

from manchet.workspace.planning import day_planned

PARTS = """
preparation pickled mushrooms
  mushrooms             900 g
  chives                 40 g
  salt                    8 g
  boil 5 min
  cool 60 min to 4 C
  good for 2 d at 4 C
  good for 60 d at -18 C

preparation hot mushrooms
  mushrooms             900 g
  butter                 90 g
  salt                    8 g
  heat 8 min to 80 C
  good for 2 h at 65 C

assembly Bowl
  makes 12 bowls
  pickled mushrooms      70 g each
  serve within 10 min
"""

PLAN = """
kitchen Row
  hands       2

plan Lunch
  on 2026-11-28
  Bowl                  24 bowls, served Sat 12:00-14:00
  hands Ines            Fri 05:00 to Fri 20:00
  hands Tom             Sat 08:00 to Sat 15:00
"""


def told(text: str) -> list[tuple[str, int]]:
    names = {"keeps-longer-than-its-part", "already-too-old", "served-too-long"}
    return [(one.name, one.place.line) for one in bakery_of(text).diagnostics if one.name in names]


def line(text: str, of: str) -> int:
    return next(number for number, one in enumerate(text.split("\n"), 1) if of in one)


@pytest.mark.parametrize(
    ("old", "new", "is_told"),
    [
        ("  serve within 10 min", "  good for 2 d at 4 C", False),
        ("  serve within 10 min", "  good for 3 d at 4 C", True),
        ("  serve within 10 min", "  good for 61 d at -18 C", True),
        ("  serve within 10 min", "  boil 5 min\n  good for 3 d at 4 C", False),  # what a heat comes to begins anew
        ("pickled mushrooms      70 g", "hot mushrooms      70 g", False),
    ],
)
def test_a_dish_keeps_no_longer_than_what_is_in_it(old: str, new: str, is_told: bool) -> None:
    text = PARTS.replace(old, new)
    expected = [("keeps-longer-than-its-part", line(text, new.split("\n")[-1].strip()))] if is_told else []
    assert told(text) == expected


@pytest.mark.parametrize(("hours", "is_told"), [("2 h", False), ("3 h", True)])
def test_a_dish_is_served_no_later_than_what_is_held_hot_on_it(hours: str, is_told: bool) -> None:
    text = PARTS.replace("pickled mushrooms      70 g", "hot mushrooms      70 g").replace("10 min", hours)
    assert bool(told(text)) is is_told


@pytest.mark.parametrize(
    ("made", "is_told"),
    [("Wed 14:00", True), ("Thu 14:00", False), ("Thu 13:00", True)],
)
def test_what_was_made_too_long_ago_is_told_at_its_line(made: str, is_told: bool) -> None:
    text = (PARTS + PLAN).replace("  good for 60 d at -18 C\n", "")
    text = text.replace("  hands Ines", f"  already made          pickled mushrooms 2 kg made {made}\n  hands Ines")
    assert told(text) == ([("already-too-old", line(text, "already made"))] if is_told else [])


def test_what_can_be_frozen_is_not_too_old() -> None:
    text = (PARTS + PLAN).replace("  hands Ines", "  already made  pickled mushrooms made Mon 10:00\n  hands Ines")
    assert told(text) == []


@pytest.mark.parametrize(("window", "is_told"), [("12:00-14:00", False), ("12:00-14:30", True)])
def test_nothing_is_served_after_it_is_over(window: str, is_told: bool) -> None:
    text = (PARTS + PLAN).replace("pickled mushrooms      70 g", "hot mushrooms      70 g")
    text = text.replace("12:00-14:00", window)
    assert told(text) == ([("served-too-long", line(text, "Sat " + window))] if is_told else [])


def test_the_first_plate_is_built_when_the_first_guests_are_there() -> None:
    bakery = bakery_of(PARTS + PLAN)
    day = day_planned(bakery.plans[0], bakery).value
    assert day is not None
    (building,) = (job for job in day.day.jobs if job.breads == ("Bowl",))
    assert day.clock.at(building.latest).strftime("%a %H:%M") == "Sat 12:00"
    (wait,) = (wait for wait in day.day.waits if wait.what == "pickled mushrooms")
    assert wait.most == 2 * 24 * 60 - 2 * 60, "so old at the last plate as it may be"
