"""A day planned again by the solver: never worse than without, in the order of what gives way, and what it says of it is so."""

from __future__ import annotations

from random import Random

from day.brute_force import best_plan, tiny_day
from day.days import FIRE_NIGHT, MORNING
from day.random_days import random_day
from every import every

from manchet.day.again.fixing import Again, day_again
from manchet.day.again.moves import GOALS_AGAIN, cost_again, moves
from manchet.day.again.news import LateBy, News
from manchet.day.again.planning import plan_again
from manchet.day.again.repair import plan_kept
from manchet.day.checking import check_planned
from manchet.day.goals import MOST_ROOM
from manchet.day.model import Day, Planned, Timetable
from manchet.day.solving.again import plan_again_by_solver


def nobody(day: Day) -> Timetable | None:
    return None


def reached(plan: Planned) -> tuple[int, ...]:
    """What the plan says it costs, as `cost_again` has it."""
    return tuple(MOST_ROOM - goal.value if goal.name == "room" else goal.value for goal in plan.goals)


def late_day(seed: int) -> Again:
    chance = Random(seed)
    day, last = random_day(seed)
    kind = chance.choice(("job", "wait", "load"))
    what = {kind: chance.randrange({"job": len(day.jobs), "wait": len(day.waits), "load": len(day.loads)}[kind])}
    return day_again(day, last, News(chance.randint(150, 900), (), (LateBy(chance.choice((5, 15, 40)), **what),)))


@every(range(30), at_least=30)
def test_it_is_never_worse_than_without_and_says_what_it_costs(seed: int) -> None:
    again = late_day(seed)
    kept = plan_kept(again, nobody)
    plan = plan_again_by_solver(again, kept)
    if plan is None:
        assert kept is None
        return
    assert check_planned(again.day, plan) == ()
    assert [goal.name for goal in plan.goals] == list(GOALS_AGAIN)
    assert reached(plan) == cost_again(again, plan.timetable)
    assert kept is None or reached(plan) <= cost_again(again, kept)
    assert all(plan.timetable.starts[job] == again.was[job] for job in again.begun)


@every([MORNING, FIRE_NIGHT, *(random_day(seed) for seed in range(10))], at_least=12)
def test_where_nothing_changed_nothing_moves_with_a_solver_either(made: tuple[Day, Timetable]) -> None:
    day, last = made
    for minute in (200, 500):
        again = day_again(day, last, News(minute))
        plan = plan_again(again, nobody, plan_again_by_solver).planned
        assert plan is not None
        assert moves(again, plan.timetable) == ()


def test_of_all_plans_on_time_it_is_the_one_that_moves_least() -> None:
    """Where nothing is late and nothing waits beyond its range nothing can be better in these, so no minute moves."""
    tried = 0
    for seed in range(30):
        day = tiny_day(seed)
        best = best_plan(day)
        if best is not None and best.late == best.may_wait == 0:
            tried += 1
            again = day_again(day, best.plan, News(day.begins))
            plan = plan_again_by_solver(again, None)
            assert plan is not None
            assert plan.timetable.starts == best.plan.starts
            assert plan.goals[GOALS_AGAIN.index("moved")].proven
    assert tried > 5


def test_a_wait_is_longer_than_it_may_be_only_where_that_keeps_a_bread_on_time() -> None:
    day, last = MORNING
    mix = [job.key for job in day.jobs].index("rye/mix")
    again = day_again(day, last, News(300, (), (LateBy(48, job=mix),)))
    plan = plan_again_by_solver(again, plan_kept(again, nobody))
    assert plan is not None
    values = {goal.name: goal.value for goal in plan.goals}
    assert (values["late"], values["beyond"]) == (0, 45)
    assert all(goal.proven for goal in plan.goals[:5])
