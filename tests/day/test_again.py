"""A day planned again: the past stays, nothing begins before now, and no more changes than must."""

from __future__ import annotations

from random import Random

from day.days import FIRE_NIGHT, MORNING
from day.random_days import random_day
from every import every

from manchet.day.again.fixing import Again, day_again
from manchet.day.again.longer import longer_shifts
from manchet.day.again.moves import GOALS_AGAIN, Move, cost_again, loads_colder, moves
from manchet.day.again.news import Begun, LateBy, News, done_by, what_has_begun
from manchet.day.again.planning import plan_again
from manchet.day.again.repair import plan_kept
from manchet.day.checking import check, check_planned
from manchet.day.clashes.remedies import STEP
from manchet.day.model import Day, Planned, Timetable
from manchet.day.together import may_share

HOURS = (0, 200, 420, 650, 900, 1440)


def never(day: Day) -> Timetable | None:
    """Whoever plans anew where nothing that was planned can be kept."""
    raise AssertionError("planned anew")


def number(day: Day, key: str) -> int:
    return [job.key for job in day.jobs].index(key)


def moved(again: Again, plan: Timetable) -> dict[str, int]:
    return {again.day.jobs[move.job].key: move.start for move in moves(again, plan)}


@every(range(30), at_least=30)
def test_where_nothing_changed_nothing_moves(seed: int) -> None:
    day, last = random_day(seed)
    for minute in HOURS:
        again = day_again(day, last, News(minute))
        assert again.begun == {at for at, start in enumerate(last.starts) if start < minute}
        plan = plan_kept(again, never)
        assert plan is not None and plan.starts == last.starts
        assert moves(again, plan) == () and check(again.day, plan) == ()


@every(range(80), at_least=80)
def test_the_past_stays_and_the_rest_begins_from_now_on(seed: int) -> None:
    chance = Random(seed)
    day, last = random_day(seed)
    things = [
        (what, at)
        for what, all_of in (("job", day.jobs), ("wait", day.waits), ("load", day.loads))
        for at in range(len(all_of))
    ]
    what, at = chance.choice(things)
    news = News(chance.randint(150, 900), (), (LateBy(chance.choice((5, 15, 40)), **{what: at}),))
    again = day_again(day, last, news)
    plan = plan_kept(again, lambda _: None)
    if plan is not None:
        assert check(again.day, plan) == ()
        for job, start in enumerate(plan.starts):
            assert start == again.was[job] if job in again.begun else start >= max(news.minute, last.starts[job])


def test_a_late_dough_moves_what_waits_for_it_and_no_more() -> None:
    """The tin proves 20 min longer. Its load is at 440, out at 480 to 483; 15 min later, at 498, the oven has climbed for the rye,
    which proves 90 min at the most: it is shaped at 408. The break stays behind the rye's loading, which ends at 502."""
    day, last = MORNING
    prove = next(at for at, wait in enumerate(day.waits) if day.jobs[wait.after].key == "tin/load 1")
    again = day_again(day, last, News(340, (), (LateBy(20, wait=prove),)))
    plan = plan_kept(again, never)
    assert plan is not None
    assert moved(again, plan) == {
        "rye/shape": 408, "tin/load 1": 440, "tin/take out 1": 480, "rye/load 1": 498, "Ines/break": 502, "rye/take out 1": 558,
    }  # fmt: skip
    costs = dict(zip(GOALS_AGAIN, cost_again(again, plan), strict=True))
    # The levain ripens 207 min for the rye, which is 27 beyond its most, and the rye now proves 90, which is 15.
    assert (costs["late"], costs["beyond"], costs["may wait"], costs["moved"]) == (0, 0, 42, 8 + 20 + 20 + 20 + 12 + 20)


def test_a_colder_floor_comes_before_waiting_and_being_late() -> None:
    """The hearth bread is to go in at 265, 45 min after the fire; 50 min later the floor has 243 C, and 250 are its coldest."""
    day, last = FIRE_NIGHT
    shape = next(at for at, wait in enumerate(day.waits) if day.jobs[wait.after].key == "hearth/load 1")
    again = day_again(day, last, News(200, (), (LateBy(50, wait=shape),)))
    plan = plan_kept(again, lambda _: None)
    assert plan is not None and plan.starts[number(day, "hearth/load 1")] == 315
    assert tuple(loads_colder(again, plan)) == ((0, 10),)
    assert "floor" in {refusal.rule for refusal in check(again.own, plan)}
    far = day_again(day, last, News(200, (), (LateBy(80, wait=shape),)))
    assert plan_kept(far, lambda _: None) is None  # 223 C are more than 15 C under


def test_what_cannot_be_kept_is_planned_anew() -> None:
    day, last = MORNING
    asked = []
    again = day_again(day, last, News(100, (), (LateBy(700, job=0),)))
    assert plan_kept(again, lambda soft: asked.append(soft)) is None
    assert asked == [again.day]


def test_a_wait_may_be_beyond_its_range() -> None:
    """The levain was fed at 145; nobody could mix the rye before 400: 255 min, where 180 are the most and 30 may be waited."""
    day, last = MORNING
    again = day_again(day, last, News(300, (), (LateBy(48, job=number(day, "rye/mix")),)))
    plan = plan_kept(again, lambda _: None)
    assert plan is not None and plan.starts[number(day, "rye/mix")] == 400
    costs = dict(zip(GOALS_AGAIN, cost_again(again, plan), strict=True))
    assert (costs["beyond"], costs["may wait"] >= 75, costs["late"]) == (45, True, 0)


def test_who_has_gone_by_then_hands_over() -> None:
    """Tom goes at 420, and loading the buns, at 419, takes three minutes: Ines does it, who came at 400."""
    day, last = FIRE_NIGHT
    load = number(day, "bun/load 1")
    again = day_again(day, last, News(300, (), (LateBy(49, job=load),)))
    plan = plan_kept(again, lambda _: None)
    assert plan is not None and plan.starts[load] == 419
    assert (last.shifts[load], plan.shifts[load]) == (0, 1)
    assert (load, 1) in {(move.job, move.shift) for move in moves(again, plan)}


def test_who_would_have_to_stay_longer_is_told_by_how_much() -> None:
    """As above, but nobody comes after Tom: the buns' loading ends at 422, and the next five minutes are 425."""
    day, last = FIRE_NIGHT
    alone = day._replace(shifts=day.shifts[:1])
    until = next(at for at, job in enumerate(day.jobs) if job.key == "bun/load 1")
    late = News(300, (), (LateBy(49, job=until),))
    longer = list(
        longer_shifts(
            day_again(alone, last._replace(shifts=tuple(min(at, 0) for at in last.shifts)), late), lambda _: None
        )
    )
    assert [(one.shift, one.ends % STEP) for one in longer] == [(0, 0)]
    assert longer[0].ends > day.shifts[0].ends


def test_two_that_are_in_are_not_asked_whether_they_suit_one_deck() -> None:
    """Two loads that share a deck by twenty-five minutes; one of them is left in for thirty more."""
    one, other = (load._replace(stays=stays) for load, stays in zip(MORNING.day.loads[:2], (40, 75), strict=True))
    (oven, *_) = MORNING.day.ovens
    assert not may_share(oven, one, other)
    assert may_share(oven, one._replace(is_in=True), other._replace(is_in=True))
    assert not may_share(oven, one._replace(is_in=True), other)


def test_what_has_begun_is_what_was_said_and_what_was_planned_before_now() -> None:
    day, last = MORNING

    def begun(news: News) -> dict[str, int]:
        return {day.jobs[job].key: told.at for job, told in what_has_begun(day, last, news).items()}

    assert begun(News(145)) == {}
    assert begun(News(251)) == {"levain/feed": 145, "tin/mix": 250}
    # The dough isn't mixed yet, so neither is it divided, though that was to be at 332.
    late = LateBy(120, job=number(day, "tin/mix"))
    assert begun(News(340, (), (late,))) == {"levain/feed": 145}
    # At 375 it was begun after all, 120 min late: it is divided 72 min later at the soonest.
    assert begun(News(375, (), (late,))) == {"levain/feed": 145, "rye/mix": 352, "tin/mix": 370}
    # Who shapes the rye has mixed it, 40 min before at the latest.
    early = Begun(number(day, "rye/shape"), 330)
    assert begun(News(331, (early,))) == {"levain/feed": 145, "tin/mix": 250, "rye/mix": 290, "rye/shape": 330}


def test_what_is_done_was_begun_as_planned_or_has_just_ended() -> None:
    day, last = MORNING
    divide = number(day, "tin/divide")
    assert done_by(day, last, divide, 400) == Begun(divide, 332)
    assert done_by(day, last, divide, 345) == Begun(divide, 325)
    again = day_again(day, last, News(345, (done_by(day, last, divide, 345),)))
    plan = plan_kept(again, never)
    assert plan is not None and plan.starts[divide] == 325


def test_what_took_longer_keeps_its_hands_as_long() -> None:
    day, last = MORNING
    divide = number(day, "tin/divide")
    told = News(345, (Begun(divide, 334),), (LateBy(10, job=divide),))
    again = day_again(day, last, told)
    assert again.day.jobs[divide]._replace(does="") == day.jobs[divide]._replace(
        does="", earliest=334, latest=334, minutes=30, shift="Ines"
    )
    plan = plan_kept(again, lambda _: None)
    assert plan is not None and plan.starts[number(day, "rye/mix")] == 364


def test_a_past_that_cannot_have_been_is_no_reason_to_refuse() -> None:
    """Two doughs at one mixer by one pair of hands, as it is said: both are over, and only what comes counts."""
    day, last = MORNING
    mixes = [number(day, key) for key in ("tin/mix", "rye/mix")]
    again = day_again(day, last, News(300, tuple(Begun(at, 250) for at in mixes)))
    plan = plan_kept(again, lambda _: None)
    assert plan is not None and check(again.day, plan) == ()
    assert {again.day.jobs[at].hands for at in mixes} == {0, 1}


def test_a_load_that_bakes_longer_comes_out_later_and_so_does_what_follows_it() -> None:
    day, last = MORNING
    again = day_again(day, last, News(430, (), (LateBy(10, load=0),)))
    plan = plan_kept(again, never)
    assert plan is not None
    assert moved(again, plan) == {
        "tin/take out 1": 470, "rye/load 1": 488, "Ines/break": 492, "rye/take out 1": 548,
    }  # fmt: skip


def test_what_still_stands_is_left_alone_though_a_solver_knew_better() -> None:
    def better(again: Again, known: Timetable | None) -> Planned:
        raise AssertionError("asked to find something better")

    day, last = FIRE_NIGHT
    planned = plan_again(day_again(day, last, News(250)), never, better).planned
    assert planned is not None and (planned.timetable.starts, planned.engine) == (last.starts, "by hand")
    assert check_planned(day, planned) == ()
    assert [goal.name for goal in planned.goals] == list(GOALS_AGAIN)
    assert all(goal.bound <= goal.value or goal.name == "room" for goal in planned.goals)


def test_what_no_longer_stands_is_given_to_the_solver_with_what_was_found_without() -> None:
    day, last = MORNING
    again = day_again(day, last, News(430, (), (LateBy(10, load=0),)))
    kept = plan_kept(again, never)
    asked: list[tuple[Again, Timetable | None]] = []

    def better(told: Again, known: Timetable | None) -> Planned | None:
        asked.append((told, known))
        return None

    found = plan_again(again, never, better)
    assert asked == [(again, kept)]
    # Where the solver finds none, what was found without it stays.
    assert found.planned is not None and found.planned.timetable == kept


def test_a_move_tells_the_old_hour_and_the_new_and_whose_it_is() -> None:
    day, last = MORNING
    again = day_again(day, last, News(430, (), (LateBy(10, load=0),)))
    plan = plan_kept(again, never)
    assert plan is not None
    assert moves(again, plan)[0] == Move(job=7, was=460, start=470, shift_was=0, shift=0)
