"""The plan by the solver: it holds to every rule, nothing is better, and what is said of it is so."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import product

from day.brute_force import best_plan, tiny_day
from day.days import FIRE_NIGHT, MORNING, Draft, Made, heats
from day.random_days import random_day
from every import every

from manchet.day.checking import check, check_planned
from manchet.day.goals import GOALS, MOST_ROOM, cost
from manchet.day.model import Day, DayOven, End, Planned, Shift, Timetable
from manchet.day.solving.search import Limits, feasible_by_solver, planned_by_solver


def planned(day: Day, known: Timetable | None = None) -> Planned:
    answer = planned_by_solver(day, known)
    assert answer.planned is not None
    return answer.planned


def value_of(plan: Planned) -> tuple[int, ...]:
    """What the plan says it costs, as `cost` has it."""
    return tuple(MOST_ROOM - goal.value if goal.name == "room" else goal.value for goal in plan.goals)


@every(range(30), at_least=30)
def test_a_random_day_is_planned_within_its_rules_and_never_worse_than_the_plan_known(seed: int) -> None:
    day, known = random_day(seed)
    plan = planned(day, known)
    assert check_planned(day, plan) == ()
    assert cost(day, plan.timetable) <= cost(day, known)
    assert value_of(plan) == cost(day, plan.timetable)
    assert [goal.name for goal in plan.goals] == list(GOALS)
    assert plan.is_finished


@every(range(30), at_least=30)
def test_a_plan_that_holds_is_a_plan_in_the_model_too(seed: int) -> None:
    """With every job bound to its minute of a plan that holds there is one plan: the model forbids nothing that may be."""
    day, known = random_day(seed)
    bound = day._replace(
        jobs=tuple(job._replace(earliest=at, latest=at) for job, at in zip(day.jobs, known.starts, strict=True))
    )
    assert planned(bound).timetable.starts == known.starts


@every(range(40), at_least=40)
def test_no_plan_of_a_tiny_day_is_later_or_waits_less(seed: int) -> None:
    day = tiny_day(seed)
    best, answer = best_plan(day), planned_by_solver(day)
    if best is None:
        assert answer.is_impossible
        assert answer.planned is None
    else:
        assert answer.planned is not None
        assert cost(day, answer.planned.timetable)[:2] == (best.late, best.may_wait)
        assert all(goal.proven for goal in answer.planned.goals)


def two_breads(*, decks: int = 1, may: int = 3, gone: int = 7, mixed: int = 5) -> Day:
    """Two breads in fifteen minutes, in which every plan can be tried."""
    day = Draft(0, 15)
    day.ovens.append(DayOven("deck", decks, 1, 1))
    day.shifts.extend((Shift("Tom", "Tom", 1, 0, gone), Shift("Ines", "Ines", 1, 6, 15)))
    for bread, least, share in (("tin", 2, Fraction(1)), ("rye", 3, Fraction(1, 2))):
        mix = day.job(f"{bread}/mix", 1, 0, mixed)
        put = day.job(f"{bread}/load 1", 1, 2, 10)
        day.load(bread, "deck", 3, put, share, heats(220, 240), heats(220, 240), minutes=1)
        day.wait(mix, put, least, least + 1, may)
        day.ends.append(End(bread, 1, "loaf", day.loads[-1].take, 1, 9 if bread == "tin" else 11, oldest=6))
    return day.day()


def every_plan(day: Day) -> Iterator[Timetable]:
    free = [job for job in range(len(day.jobs)) if all(load.take != job for load in day.loads)]
    spans = [range(day.jobs[job].earliest, day.jobs[job].latest + 1) for job in free]
    for minutes in product(*spans):
        starts = dict(zip(free, minutes, strict=True))
        starts |= {load.take: starts[load.put] + load.stays for load in day.loads}
        lengths = [job.minutes for job in day.jobs]
        able = [
            [at for at, shift in enumerate(day.shifts) if shift.begins <= starts[job] <= shift.ends - lengths[job]]
            for job in range(len(day.jobs))
        ]
        for shifts in product(*able):
            for decks in product(range(day.ovens[0].decks), repeat=len(day.loads) - 1):
                plan = Timetable(tuple(starts[job] for job in range(len(day.jobs))), shifts, (0, *decks))
                if not check(day, plan):
                    yield plan


@every([two_breads(), two_breads(decks=2), two_breads(may=0), two_breads(gone=5), two_breads(mixed=1)], at_least=5)
def test_nothing_is_better_in_any_goal_those_before_it_held(day: Day) -> None:
    best = min(cost(day, plan) for plan in every_plan(day))
    plan = planned(day)
    assert value_of(plan) == cost(day, plan.timetable) == best
    assert all(goal.proven and goal.bound == goal.value for goal in plan.goals)


@every([MORNING, FIRE_NIGHT], at_least=2)
def test_a_day_made_by_hand_is_planned(made: Made) -> None:
    day, known = made
    found = planned(day)
    assert check_planned(day, found) == ()
    assert cost(day, found.timetable) <= cost(day, known)


def test_the_same_day_gives_the_same_plan() -> None:
    day, known = random_day(10)
    assert planned(day, known) == planned(day, known)
    assert planned(day) == planned(day)


def test_when_the_clock_stops_it_the_plan_known_stands_and_says_so() -> None:
    day, known = random_day(10)
    answer = planned_by_solver(day, known, Limits(seconds=0))
    assert answer.planned is not None
    assert answer.planned.timetable == known
    assert not answer.planned.is_finished
    assert not any(goal.proven for goal in answer.planned.goals if goal.name in ("late", "presence"))
    assert planned_by_solver(day, None, Limits(seconds=0)) == (None, False)


def test_a_plan_that_breaks_a_rule_is_not_begun_with() -> None:
    day, known = MORNING
    broken = known._replace(starts=(0, *known.starts[1:]))
    assert check(day, broken) != ()
    assert check(day, planned(day, broken).timetable) == ()


def without_hands(made: Made) -> Day:
    return made.day._replace(shifts=())


def with_one_minute(made: Made) -> Day:
    """Both breads due so that each would have to bake at the other's hour."""
    return made.day._replace(
        jobs=tuple(
            job._replace(earliest=400, latest=400) if "load" in job.does or "take" in job.does else job
            for job in made.day.jobs
        )
    )


@every([without_hands(MORNING), with_one_minute(MORNING)], at_least=2)
def test_what_cannot_be_planned_is_proven_so(day: Day) -> None:
    assert planned_by_solver(day) == (None, True)
    assert feasible_by_solver(day) == (None, True)


def test_some_plan_is_enough_where_none_is_asked_to_be_good() -> None:
    answer = feasible_by_solver(MORNING.day)
    assert answer.planned is not None
    assert check(MORNING.day, answer.planned.timetable) == ()
