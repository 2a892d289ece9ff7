"""Both ways of planning a day, with and without the solver, on days of all sorts: neither is ever refused by whoever looks plans
over, and what the solver finds is never later and never waits longer."""

from __future__ import annotations

from day.brute_force import best_plan, tiny_day
from day.days import Made
from day.random_days import hurried_day, random_day
from every import every

from manchet.day.again.fixing import day_again
from manchet.day.again.moves import cost_again, moves
from manchet.day.again.news import LateBy, News
from manchet.day.again.planning import plan_again
from manchet.day.checking import check_planned
from manchet.day.goals import cost
from manchet.day.model import Day, Planned, Timetable
from manchet.day.posting import plan_by_hand
from manchet.day.solving.again import plan_again_by_solver
from manchet.day.solving.search import planned_by_solver


def by_hand(day: Day) -> Timetable | None:
    plan = plan_by_hand(day)
    return plan.timetable if isinstance(plan, Planned) else None


@every([*(random_day(seed) for seed in range(40, 65)), *(hurried_day(seed) for seed in range(12))], at_least=37)
def test_neither_is_refused_and_the_solver_is_no_later(made: Made) -> None:
    day, witness = made
    plan = plan_by_hand(day)
    assert isinstance(plan, Planned)
    assert check_planned(day, plan) == ()
    answer = planned_by_solver(day, plan.timetable)
    assert answer.planned is not None
    assert check_planned(day, answer.planned) == ()
    # On time and waiting are proven, so the plan that the day was made with is no better either.
    assert all(goal.proven for goal in answer.planned.goals[:2])
    found = cost(day, answer.planned.timetable)[:2]
    assert found <= min(cost(day, plan.timetable)[:2], cost(day, witness)[:2])


@every([*(random_day(seed) for seed in (17, 60, 162)), *(hurried_day(seed) for seed in (0, 60))], at_least=5)
def test_a_plan_that_holds_is_none_that_cannot_be(made: Made) -> None:
    """Bound to the minutes of a plan, or left free, a day that has one is not said to be impossible. Two fires in the order of their
    windows, hands of shifts that overlap, a mixer that is away: each was one."""
    day, plan = made
    jobs = tuple(job._replace(earliest=at, latest=at) for job, at in zip(day.jobs, plan.starts, strict=True))
    assert isinstance(plan_by_hand(day), Planned)
    assert isinstance(plan_by_hand(day._replace(jobs=jobs)), Planned)


@every(range(40, 60), at_least=20)
def test_of_a_tiny_day_both_find_a_plan_where_there_is_one(seed: int) -> None:
    day = tiny_day(seed)
    best, plan = best_plan(day), plan_by_hand(day)
    assert isinstance(plan, Planned) == (best is not None)
    if best is not None and isinstance(plan, Planned):
        assert check_planned(day, plan) == ()
        assert cost(day, plan.timetable)[:2] >= (best.late, best.may_wait)


@every(range(12), at_least=12)
def test_planned_again_it_is_no_worse_with_the_solver(seed: int) -> None:
    """From the plan without a solver on, with a dough that wants half an hour more."""
    day, _ = random_day(seed)
    last = by_hand(day)
    assert last is not None
    again = day_again(
        day, last, News(sorted(last.starts)[len(last.starts) // 2], (), (LateBy(30, wait=seed % len(day.waits)),))
    )
    found = plan_again(again, by_hand), plan_again(again, by_hand, plan_again_by_solver)
    assert not any(each.refused for each in found)
    without, with_solver = (each.planned for each in found)
    for plan in (without, with_solver):
        assert plan is None or check_planned(again.day, plan) == ()
    if without is not None:
        assert with_solver is not None
        assert cost_again(again, with_solver.timetable) <= cost_again(again, without.timetable)


@every(range(12), at_least=12)
def test_where_nothing_changed_nothing_moves_whoever_planned(seed: int) -> None:
    day, _ = random_day(seed)
    by_solver = planned_by_solver(day).planned
    for last in (by_hand(day), by_solver.timetable if by_solver else None):
        assert last is not None
        again = day_again(day, last, News(sorted(last.starts)[len(last.starts) // 2]))
        for better in (None, plan_again_by_solver):
            plan = plan_again(again, by_hand, better).planned
            assert plan is not None and moves(again, plan.timetable) == ()
