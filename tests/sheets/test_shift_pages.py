"""The pages of the shifts: rows, what gives when it is late, and what is seen to before anybody goes."""

from __future__ import annotations

from day.market import market, number_of, with_day, with_starts
from sheets.each_form import ISSUE, METRIC, US

from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.forms.day_shift.pages import shift_pages
from manchet.sheets.forms.day_shift.view import ShiftPage
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import NBSP
from manchet.sheets.parts.day_views import WorkRow


def pages(plan: DayPlan, house: House = METRIC) -> dict[str, ShiftPage]:
    return {page.title: page for page in shift_pages(plan, ISSUE, house).shifts}


def rows(page: ShiftPage) -> dict[str, WorkRow]:
    return {row.clock: row for day in page.days for row in day.rows}


def said(row: WorkRow) -> list[str]:
    return [
        " · ".join(" ".join(filter(None, (clause.do, clause.how))) for clause in line.clauses) for line in row.lines
    ]


def gives(page: ShiftPage, bread: str) -> list[str]:
    return [f"{one.clocks} {one.gives}" for late in page.late if late.bread == bread for one in late.jobs]


def test_a_page_for_each_shift_but_the_evening_before() -> None:
    assert list(pages(market())) == ["Friday: Ines", "Friday: Tom", "Saturday: Ines"]


def test_a_row_is_read_off_the_plan() -> None:
    row = rows(pages(market())["Friday: Tom"])["22:27"]
    assert [(line.clock, line.bread) for line in row.lines] == [("", "Ebb rye"), ("22:31", "Causeway")]
    assert said(row) == [
        "all 14 loaves in floor about 270\N{NO-BREAK SPACE}°C",
        "score one cross, a finger deep · all 10 loaves in floor about 270\N{NO-BREAK SPACE}°C",
    ]
    assert (row.sharp, row.start_by, row.minutes) == (True, "", "7\N{NO-BREAK SPACE}min")
    assert rows(pages(market())["Friday: Ines"])["08:50"].start_by == "08:54"


def test_what_goes_cold_and_what_is_an_estimate_is_said() -> None:
    row = rows(pages(market())["Friday: Ines"])["11:33"]
    assert row.lines[0].then == "to the cold" and row.minutes.startswith("~")


def test_a_caution_stands_in_its_row() -> None:
    found = [
        (row.clock, note.catchword)
        for row in rows(pages(market())["Friday: Ines"]).values()
        for line in row.lines
        for note in line.cautions
    ]
    assert ("08:17", "Warm soaker") in found and all(note for _, note in found), (
        "a wait has its own with what begins it"
    )


def test_what_gives_changes_with_one_wait() -> None:
    """Mudlark's bulk may go on for 64 min more, which its retard then makes good; with 40 min less of it, 24; with none, nothing."""
    plan = market()
    assert gives(pages(plan)["Friday: Ines"], "Mudlark") == ["10:20 up to 64\N{NO-BREAK SPACE}min: shorter retard"]
    day, divided = plan.day, number_of(plan, "Mudlark/divide")
    less = [wait._replace(most=wait.most - 40) if wait.after == divided and wait.most else wait for wait in day.waits]
    after = gives(pages(with_day(plan, day._replace(waits=tuple(less))))["Friday: Ines"], "Mudlark")
    assert after == ["10:20 up to 24\N{NO-BREAK SPACE}min: shorter retard"]
    fixed = [
        wait._replace(least=plan.begins(wait.after) - plan.begins(wait.before), may=0)
        if "Mudlark" in day.jobs[wait.before].breads
        else wait
        for wait in day.waits
    ]
    none = gives(pages(with_day(plan, day._replace(waits=tuple(fixed))))["Friday: Ines"], "Mudlark")
    assert none == ["from 07:30 nothing gives"]


def test_that_the_fire_is_not_delayed_is_said_only_where_everything_gives() -> None:
    plan = market()
    assert pages(plan)["Friday: Ines"].fire and not pages(plan)["Friday: Tom"].fire
    tight = [
        wait._replace(least=plan.begins(wait.after) - plan.begins(wait.before))
        if "Gangway loaf" in plan.day.jobs[wait.before].breads
        else wait
        for wait in plan.day.waits
    ]
    assert not pages(with_day(plan, plan.day._replace(waits=tuple(tight))))["Friday: Ines"].fire


def test_before_you_go_is_of_this_shift() -> None:
    page = pages(market())["Friday: Ines"]
    assert page.before_you_go[-2:] == (
        "beacon: wood laid; light at Fri 16:37",
        f"tell Tom: first job Fri 16:37, beacon: light the fire, to 330{NBSP}°C",
    )
    later = with_starts(market(), {"beacon/light": market().begins(number_of(market(), "beacon/light")) + 3})
    assert "beacon: wood laid; light at Fri 16:40" in pages(later)["Friday: Ines"].before_you_go
    assert pages(market())["Saturday: Ines"].before_you_go == ()
    stands = [line for line in pages(market())["Friday: Tom"].before_you_go if "until" in line]
    assert stands == ["Regatta plait, buns: proof until Sat 03:54", "Regatta plait, plaits: proof until Sat 04:13"]


def test_a_house_of_ounces_has_its_own_words() -> None:
    page = pages(market(), US)["Friday: Tom"]
    assert "vent open" in " ".join(text for row in rows(page).values() for text in said(row))
    assert "Regatta plait, buns: proof until Sat 03:54" in page.before_you_go
