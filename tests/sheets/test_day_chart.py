"""The day chart: its bars are the plan's minutes, and every sentence under it is read off the plan."""

from __future__ import annotations

import re

import pytest
from day.market import market, number_of, planned, with_day, with_starts
from sheets.each_form import ISSUE, METRIC, US

from manchet.day.model import Goal
from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.forms.day_chart.chart_page import chart_page
from manchet.sheets.forms.day_chart.lanes import Lanes
from manchet.sheets.forms.day_chart.view import ChartPage
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of


def page(plan: DayPlan | None = None, house: House = METRIC) -> ChartPage:
    return chart_page(plan or market(), ISSUE, house)


def test_a_lane_for_each_bread_in_the_order_they_go_in() -> None:
    lanes = Lanes(market(), 0, Measures(METRIC, words_of("")))
    assert [lane.title for lane in lanes.breads()] == [
        "Slate bread", "Ebb rye", "Causeway", "Tern loaf", "Gangway loaf", "Mudlark", "Lamplight tin", "Regatta plait",
    ]  # fmt: skip
    tern = lanes.breads()[3]
    assert {bar.of for bar in tern.stages} == {"poolish", "levain", "millet porridge"}
    (oven,) = [bar for bar in tern.bars if bar.ink == "oven"]
    into = market().begins(number_of(market(), "Tern loaf/score"))
    assert (oven.start, oven.end) == (into, into + 42)
    assert any(bar.ink == "cold" and bar.text == "retard" for bar in tern.bars)
    assert [end.clock for end in tern.ends] == ["06:00"]


def test_every_job_and_every_long_wait_is_drawn_once() -> None:
    lanes = Lanes(market(), 0, Measures(METRIC, words_of(""))).breads()
    black = sorted((bar.start, bar.end) for lane in lanes for bar in (*lane.bars, *lane.stages) if bar.ink == "work")
    jobs = [at for at, job in enumerate(market().day.jobs) if job.breads]
    assert black == sorted((market().begins(at), market().ends(at)) for at in jobs)


def test_the_head_says_what_is_made_and_when() -> None:
    assert page().makes == ("8 breads, 142 pieces", "van leaves Sat 06:00", "with Tom and Ines")
    assert page().first.startswith("First job Thu 20:25 · beacon lit Fri 16:37, fire out Fri 19:07")


def test_why_it_waits_is_read_off_the_plan() -> None:
    assert page().waits == (
        f"Ebb rye: until the floor has fallen to 270{NBSP}°C, Fri 22:27",
        "Causeway: to go in beside Ebb rye, Fri 22:31",
        "Tern loaf: until Ebb rye is out, Fri 23:28",
        "Gangway loaf: until Tern loaf is out, Sat 00:16",
        "Mudlark: to go in beside Gangway loaf, Sat 00:19",
        f"30 buns of Regatta plait: until the floor has fallen to 190{NBSP}°C, Sat 04:19",
        "White levain: ripening uses 60 of its 90 spare minutes, since nobody is there from 23:30 to 06:30",
    )


def test_the_oldest_ages_taken_by_kind_are_said() -> None:
    """Slate bread has its own; the six others that are loaves have theirs by kind, as have a rye and a sweet plait."""
    assert page().oldest == (
        f"Oldest age when due, where no file says one: 12{NBSP}h; Ebb rye 48{NBSP}h; Regatta plait 4{NBSP}h."
    )
    said = tuple((bread, oldest._replace(of_kind="")) for bread, oldest in market().of.oldest)
    assert page(market()._replace(of=market().of._replace(oldest=said))).oldest == ""


def test_a_wait_that_is_not_over_its_range_goes_from_the_page() -> None:
    """An hour more in its range: the levain uses none of its spare minutes."""
    day, user = market().day, number_of(market(), "Causeway/weigh")
    longer = [wait._replace(most=(wait.most or 0) + 60) if wait.after == user else wait for wait in day.waits]
    found = page(with_day(market(), day._replace(waits=tuple(longer))))
    assert [said for said in found.waits if "levain" in said] == []
    assert "every wait in its range" in found.sure[0] and "every wait" not in page().sure[0]
    less = [wait._replace(most=(wait.most or 0) + 25) if wait.after == user else wait for wait in day.waits]
    (said,) = [one for one in page(with_day(market(), day._replace(waits=tuple(less)))).waits if "levain" in one]
    assert "uses 35 of its 90" in said


def test_a_dough_that_is_just_ready_waits_for_nothing() -> None:
    day, put = market().day, number_of(market(), "Tern loaf/score")
    ready = [
        wait._replace(least=market().begins(put) - market().begins(wait.before)) if wait.after == put else wait
        for wait in day.waits
    ]
    found = page(with_day(market(), day._replace(waits=tuple(ready))))
    assert [said for said in found.waits if said.startswith("Tern")] == []


def test_how_sure_says_what_is_proven_and_what_is_not() -> None:
    goals = (
        Goal("late", 12, 12, True),
        Goal("may wait", 60, 45, False),
        Goal("room", 4, 9, False),
        Goal("presence", 600, 0, False),
        Goal("age", 900, 900, True),
        Goal("early", 5, 5, True),
    )
    (said, *_) = page(market()._replace(planned=market().planned._replace(goals=goals))).sure
    assert said == (
        f"12{NBSP}min late in all (the least possible); 60{NBSP}min of “may wait” used (at best it could be 45{NBSP}min); "
        f"4{NBSP}min to spare at the oven (at best it could be 9{NBSP}min); 10{NBSP}h from first to last job, all shifts together "
        f"(it could be less); bread on average 100{NBSP}min old when due (the least possible)."
    )


def test_that_it_was_checked_is_said_only_of_a_plan_that_holds() -> None:
    assert "Checked separately: no rule is broken." in page().sure
    broken = with_starts(market(), {"Tern loaf/fold": market().begins(number_of(market(), "Tern loaf/divide"))})
    assert [said for said in page(broken).sure if "Checked" in said] == []
    short = market()._replace(planned=market().planned._replace(is_finished=False))
    assert page(short).sure[-1] == "The search was cut short."


def test_where_least_is_to_spare_follows_the_floor() -> None:
    """Its dough may stand as long as it likes: then another bread has least, by the floor."""
    assert page().spare[0] == f"Slate bread, Fri 19:36: 4{NBSP}min before it has stood too long"
    day = market().day
    free = [wait._replace(most=None) if wait.after in {load.put for load in day.loads} else wait for wait in day.waits]
    loose = market()._replace(
        of=market().of._replace(day=day._replace(waits=tuple(free))),
        planned=planned(day._replace(waits=tuple(free)), market().timetable),
    )
    assert re.fullmatch(
        rf".+, (Fri|Sat) \d\d:\d\d: \d+{NBSP}min before the floor is under \d+{NBSP}°C", page(loose).spare[0]
    )


@pytest.mark.parametrize("house", [METRIC, US], ids=["A4", "Letter"])
def test_the_chart_says_in_words_what_it_shows(house: House) -> None:
    (chart,) = page(house=house).chart
    for bread in market().day.breads:
        assert f"{bread} from " in chart.title
    sizes = [float(size) for size in re.findall(r'font-size="([\d.]+)"', chart.svg)]
    assert min(sizes) * 0.315 / 0.3528 >= 7.99
