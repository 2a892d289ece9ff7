"""The days of the tests themselves: they hold, they are of all sorts, and the best plan of a tiny one is the best."""

from __future__ import annotations

from day.brute_force import best_plan, tiny_day
from day.random_days import hurried_day, random_day, sorts_of
from every import every

from manchet.day.checking import check
from manchet.day.goals import cost

SEEDS = range(40)


@every(SEEDS, at_least=40)
def test_a_random_day_comes_with_a_plan_that_holds(seed: int) -> None:
    day, plan = random_day(seed)
    assert day.ends
    assert check(day, plan) == ()


@every(range(15), at_least=15)
def test_a_hurried_day_comes_with_a_plan_that_holds(seed: int) -> None:
    assert check(*hurried_day(seed)) == ()


def test_the_same_seed_is_the_same_day() -> None:
    assert random_day(3) == random_day(3) != random_day(4)


def test_days_of_all_sorts_come_up() -> None:
    seen = [sorts_of(random_day(seed).day) for seed in SEEDS]
    assert [sort for sort in seen[0] if not any(each[sort] for each in seen)] == []


def test_tiny_days_are_on_time_or_late_or_wait_or_cannot_be_done() -> None:
    found = [(day, best_plan(day)) for day in map(tiny_day, (*range(8), 26, 38))]
    assert all(not check(day, best.plan) for day, best in found if best)
    assert all((best.late, best.may_wait) == cost(day, best.plan)[:2] for day, best in found if best)
    assert {None if best is None else (best.late > 0, best.may_wait > 0) for _, best in found} >= {
        None, (False, False), (True, False), (False, True), (True, True),
    }  # fmt: skip
