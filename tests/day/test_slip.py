"""How much later a job may begin, held against the checker, which shares nothing with it but the values."""

from __future__ import annotations

from day.market import market, number_of

from manchet.day.checking import check
from manchet.day.goals import late, may_wait
from manchet.day.model import Day, Timetable
from manchet.day.pages.shift_moments import FOLLOWS, LONGEST, moments_of
from manchet.day.pages.slip import slip, slips


def _later(timetable: Timetable, jobs: tuple[int, ...], minutes: int) -> Timetable:
    return timetable._replace(
        starts=tuple(at + minutes if job in jobs else at for job, at in enumerate(timetable.starts))
    )


def _holds(day: Day, before: Timetable, after: Timetable) -> bool:
    """No rule is broken, and it is no later and waits no longer than before."""
    same = late(day, after) <= late(day, before) and may_wait(day, after) <= may_wait(day, before)
    return same and not check(day, after)


def test_the_market_holds() -> None:
    assert check(market().day, market().timetable) == ()


def test_a_job_may_begin_as_much_later_as_is_said_and_no_more() -> None:
    day, timetable = market().day, market().timetable
    found = slips(day, timetable)
    assert sum(1 for minutes in found if minutes) > 15
    for job, minutes in enumerate(found):
        assert all(_holds(day, timetable, _later(timetable, (job,), by)) for by in (1, minutes) if by <= minutes), job
        is_at_oven = any(job in (load.put, load.take) for load in day.loads)
        if not is_at_oven:
            assert not _holds(day, timetable, _later(timetable, (job,), minutes + 1)), (day.jobs[job].key, minutes)


def test_a_row_moves_as_one() -> None:
    plan = market()
    for shift in range(len(plan.day.shifts)):
        for moment in moments_of(plan, shift):
            assert moment.slip == slip(plan.day, plan.timetable, moment.jobs)
            if moment.slip:
                assert _holds(plan.day, plan.timetable, _later(plan.timetable, moment.jobs, moment.slip))


def test_every_job_of_a_shift_stands_in_one_row() -> None:
    plan = market()
    rows = [moments_of(plan, shift) for shift in range(len(plan.day.shifts))]
    assert sorted(job for of_shift in rows for moment in of_shift for job in moment.jobs) == list(range(74))
    for of_shift in rows:
        for moment in of_shift:
            assert moment.ends - moment.begins <= LONGEST or len(moment.jobs) == 1
            ends = [plan.ends(job) for job in moment.jobs]
            assert all(plan.begins(job) - max(ends[: at + 1]) <= FOLLOWS for at, job in enumerate(moment.jobs[1:]))


def test_what_goes_in_is_sharp() -> None:
    plan = market()
    assert slip(plan.day, plan.timetable, (number_of(plan, "Tern loaf/score"),)) == 0
