"""The evening before: its rows, and what is laid, counted and told before anybody goes."""

from __future__ import annotations

from day.market import market, number_of, with_day, with_starts
from sheets.each_form import ISSUE, METRIC

from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.forms.day_tonight.tonight_page import tonight_page
from manchet.sheets.forms.day_tonight.view import TonightPage
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.day_rows import no_delay


def page(plan: DayPlan | None = None) -> TonightPage:
    return tonight_page(plan or market(), ISSUE, METRIC)


def test_the_first_shift_before_an_empty_night_is_tonight() -> None:
    assert (page().head, page().hours) == ("Tonight: Tom", "Thursday, 17:00 – 23:30")
    assert [row.clock for day in page().days for row in day.rows] == ["20:25", "22:24", "23:07", "23:24"]


def test_what_stands_overnight_is_said_with_its_end() -> None:
    assert "Tern loaf poolish: ripening until Fri 08:30" in page().before_you_go
    start = market().begins(number_of(market(), "Tern loaf/weigh"))
    later = page(with_starts(market(), {"Tern loaf/weigh": start + 1}))
    assert "Tern loaf poolish: ripening until Fri 08:31" in later.before_you_go


def test_what_two_mixes_take_of_is_said_once_with_the_first_of_them() -> None:
    day, poolish = market().day, number_of(market(), "Tern loaf/poolish/weigh")
    wait = next(wait for wait in day.waits if wait.before == poolish)
    second = wait._replace(after=number_of(market(), "Tern loaf/divide"))
    twice = with_day(market(), day._replace(waits=(second, *day.waits)))
    said = [line for line in page(twice).before_you_go if "poolish" in line]
    assert said == [line for line in page().before_you_go if "poolish" in line]


def test_a_wait_that_is_gone_takes_its_sentence_with_it() -> None:
    day, poolish = market().day, number_of(market(), "Tern loaf/poolish/weigh")
    without = with_day(market(), day._replace(waits=tuple(wait for wait in day.waits if wait.before != poolish)))
    assert [line for line in page(without).before_you_go if "poolish" in line] == []


def test_who_comes_next_and_the_fire_are_told() -> None:
    assert "tell Ines: first job Fri 06:30, Causeway: weigh" in page().before_you_go
    assert "beacon: wood laid; light at Fri 16:37" in page().before_you_go


def test_what_the_kitchen_does_not_count_is_said_to_be_taken_as_enough() -> None:
    assert not any("assumed enough" in line for line in page().equipment)
    found = page(market()._replace(of=market().of._replace(unlimited=("peel", "wicker tub"))))
    assert "not counted in the kitchen, assumed enough: peel, wicker tub" in found.equipment


def test_equipment_is_counted_for_the_whole_day() -> None:
    """12 + 10 + 14 loaves stand in baskets at once; 16 lie on three cloths of six."""
    assert set(page().equipment) == {
        "long tin: 20 of 24 counted",
        "black tray: 4 of 20 counted",
        "round basket: 36 of 40 counted",
        "linen: 3 of 4 counted",
    }


def test_where_the_first_shift_leads_into_the_day_nothing_is_done_tonight() -> None:
    plan = market()
    shifts = list(plan.day.shifts)
    shifts[0] = shifts[0]._replace(ends=shifts[1].begins)
    found = page(with_day(plan, plan.day._replace(shifts=tuple(shifts))))
    assert (found.head, found.hours, found.days) == ("Tonight", "first job Thu 20:25", ())
    assert "tell Tom: first job Thu 20:25, Tern loaf poolish: weigh" in found.before_you_go


def test_a_break_is_no_first_job() -> None:
    first = min(range(len(market().day.jobs)), key=lambda at: (market().timetable.shifts[at] != 1, market().begins(at)))
    jobs = list(market().day.jobs)
    jobs[first] = jobs[first]._replace(is_break=True)
    assert (
        "tell Ines: first job Fri 06:30, Causeway: weigh"
        not in page(with_day(market(), market().day._replace(jobs=tuple(jobs)))).before_you_go
    )


def test_a_fire_that_is_lit_before_whoever_works_tonight_goes_is_not_left_to_do() -> None:
    fire = market().day.jobs[market().day.fires[0].light].key
    assert any("wood laid" in line for line in page().before_you_go)
    early = with_starts(market(), {fire: market().day.shifts[0].ends - 30})
    assert not any("wood laid" in line for line in page(early).before_you_go)


def test_a_morning_is_not_tonight() -> None:
    """The market's first shift, Thu 17:00, ten hours sooner; and its first job at ten in the morning where it has no evening."""
    plan = market()
    first, *later = plan.day.shifts
    morning = with_day(plan, plan.day._replace(shifts=(first._replace(begins=first.begins - 600), *later)))
    assert page(morning).head == "The day before: Tom"
    into_the_day = with_day(plan, plan.day._replace(shifts=(first._replace(ends=later[0].begins), *later)))
    sooner = {job.key: start - 625 for job, start in zip(plan.day.jobs, plan.timetable.starts, strict=True)}
    found = page(with_starts(into_the_day, sooner))
    assert (found.head, found.hours) == ("Before the first job", "first job Thu 10:00")


def test_an_oven_that_is_switched_on_has_no_fire_to_delay() -> None:
    m = Measures(METRIC, words_of(METRIC.words))
    plan = market()
    electric = with_day(plan, plan.day._replace(ovens=tuple(oven._replace(curve=()) for oven in plan.day.ovens)))
    assert no_delay(plan, m) == "None of this delays the fire."
    assert no_delay(electric, m) == "None of this delays the oven."
