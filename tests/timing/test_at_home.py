"""When a bread is begun at home: hands for the mixer, counted back from an hour for which the night stays a night."""

from __future__ import annotations

from fractions import Fraction

from loaves import PLAIN_LOAF, vary
from sheets.home import QUAY, at_home

from manchet.timing.at_home import Begins, HomeCourse, course_at_home, ready_times

MIN = 60


def course(text: str = QUAY, heats: int = 40) -> HomeCourse:
    home = at_home(text)
    return course_at_home(home.work, [each.work for each in home.made_ahead], {"": Fraction(heats * MIN)})


def begins(found: HomeCourse) -> dict[tuple[str, str], float]:
    """Minutes before it is ready."""
    return {(one.what, one.name): float(one.before / MIN) for one in found.begins}


def test_each_thing_begins_so_long_before_it_is_ready() -> None:
    found = begins(course())
    # After it: 42.5 min of bake, 2 h of cooling, and by estimate 10 s to load and 5 s to take out each of 2.
    assert found["bake", ""] == 163 and found["oven", ""] == 203
    # Dividing, 10 s each by estimate; 20 s for each of 2 loaves, 67.5 min of proof, and 5 s to score each by estimate.
    assert round(found["divide", ""] - found["bake", ""], 2) == round(67.5 + (20 + 40 + 10) / 60, 2)
    # By hand: 3 min and 20 of rest, 10 min (8 to 12) of kneading with 12.5 of rests (2 or 3 of 5 min), 2 h of bulk. By
    # estimate six lines of 25 s are weighed, and the salt is added in 30 s.
    assert round(found["stage", "dough"] - found["divide", ""], 2) == 3 + 20 + 10 + 12.5 + 120 + 2.5 + 0.5
    # The poolish: three lines, 3 min of stirring, 11 h.
    assert round(found["stage", "poolish"] - found["stage", "dough"], 2) == 1.25 + 3 + 660


def test_a_machine_s_minutes_are_not_counted_at_home() -> None:
    slow, fast = course(), course(QUAY.replace("mix fast 4 min", "mix fast 8 min"))
    assert fast.total > slow.total
    assert course(QUAY.replace("mix slow 5 min", "mix slow 9 min")).total == slow.total


def test_what_is_made_ahead_is_ready_when_it_is_first_used() -> None:
    text = QUAY.replace("    score", "    brush with egg wash 6 g each\n    score")
    text += "\npreparation egg wash\n  eggs 500 g\n  milk 100 g\n  whisk 2 min\n  good for 1 d at 4 C\n"
    found = begins(course(text))
    # Two lines of 25 s are weighed and it is whisked; two loaves are brushed, 4 s each, and scored, 5 s each.
    assert round((found["ahead", "egg wash"] - found["bake", ""]) * 60) == 50 + 120 + 8 + 10


def test_the_hours_are_those_with_the_fewest_jobs_at_night() -> None:
    """Hands 2 h and 14 h before: ready at 13:00 that is 11:00 and 23:00; one hour earlier the night is free."""
    hands = tuple(Fraction(hours * 3600) for hours in (14, 2))
    found = ready_times(HomeCourse(Fraction(14 * 3600), Fraction(0), (Begins("stage", "dough", hands[0]),), hands))
    assert [(at.weekday, at.hour) for at in found] == [(5, 9), (5, 12), (6, 12)]


def test_where_every_hour_is_as_good_one_is_at_noon_and_two_stand_apart() -> None:
    found = ready_times(HomeCourse(Fraction(3600), Fraction(0), (), (Fraction(3600),)))
    assert [(at.weekday, at.hour) for at in found] == [(5, 10), (5, 13), (6, 13)]


def test_a_stirred_thing_is_not_kneaded() -> None:
    assert begins(course(vary(PLAIN_LOAF, mix="slow 5 min")))["stage", "dough"] > 0
