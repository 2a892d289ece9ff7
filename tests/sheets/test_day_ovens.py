"""The oven card of a planned day: clocks, floors and what to do if they are others than planned."""

from __future__ import annotations

from fractions import Fraction

from day.market import demo, market, number_of, with_day, with_starts
from sheets.each_form import ISSUE, METRIC, US

from manchet.day.model import Planned
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.oven_settings import DeckTurn, settings_of
from manchet.day.pages.shift_moments import moments_of
from manchet.day.posting import plan_by_hand
from manchet.sheets.forms.day_oven.ovens_page import ovens_page
from manchet.sheets.forms.day_oven.view import OvenOfDay, OvenRow
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.day_jobs import JobWords
from manchet.workspace.planning import day_planned


def oven(plan: DayPlan | None = None, house: House = METRIC) -> OvenOfDay:
    (found,) = ovens_page(plan or market(), ISSUE, house).ovens
    return found


def row(bread: str, plan: DayPlan | None = None, house: House = METRIC) -> OvenRow:
    return next(one for one in rows(oven(plan, house)) if one.bread == bread)


def rows(one: OvenOfDay) -> list[OvenRow]:
    return [line.load for line in one.lines if line.load is not None]


def acts(one: OvenOfDay) -> list[tuple[str, str, str]]:
    return [(line.act.clock, line.act.does, line.act.who) for line in one.lines if line.act is not None]


def test_the_fire_and_then_each_load_by_the_clock() -> None:
    assert acts(oven()) == [
        ("16:37", f"light the fire, to 330{NBSP}°C: 2{NBSP}h 30{NBSP}min", "Tom"),
        ("19:07", "fire out", ""),
    ]
    assert [line.act.floor for line in oven().lines if line.act is not None] == ["", "330"]
    assert [(one.number, one.clock, one.out) for one in rows(oven())][:3] == [
        ("1", "19:36", "19:47"), ("2", "22:27", "23:22"), ("3", "22:31", "23:16"),
    ]  # fmt: skip
    assert [one.clock for one in rows(oven())] == sorted(
        (one.clock for one in rows(oven())), key=lambda c: (c < "12", c)
    )


def test_what_goes_in_beside_what() -> None:
    assert (row("Ebb rye").beside, row("Causeway").beside, row("Tern loaf").beside) == ("beside 3", "beside 2", "")


def test_floors_are_those_of_the_curve_to_five_degrees() -> None:
    """80 °C in 266 2/3 minutes from 330 °C on: 200 minutes after the fire is out 60 °C less."""
    assert row("Ebb rye").floor == "270"
    assert (
        market().begins(number_of(market(), "Ebb rye/load"))
        - market().begins(number_of(market(), "beacon/light"))
        - 150
        == 200
    )
    assert row("Ebb rye").bounds == "not under 250 · by 22:31"
    assert all(int(one.floor) % 5 == 0 for one in rows(oven()))


def test_what_is_done_meanwhile_has_its_clock() -> None:
    assert "damper open 22:47" in row("Ebb rye").then and "turn the bread 23:00" in row("Ebb rye").then
    later = with_starts(market(), {"Ebb rye/vent open": market().begins(number_of(market(), "Ebb rye/vent open")) + 2})
    assert "damper open 22:49" in row("Ebb rye", later).then


def test_if_the_floor_is_colder_another_goes_first_only_if_it_is_ready() -> None:
    """Tern loaf is in the cold room and could go in at once; were its retard an hour longer, it could not."""
    assert row("Ebb rye").colder == "Floor under 250? Load 4 first."
    day = market().day
    put = [number_of(market(), key) for key in ("Tern loaf/score", "Gangway loaf/score", "Mudlark/score")]
    waits = tuple(
        wait._replace(least=market().begins(wait.after) - market().begins(wait.before)) if wait.after in put else wait
        for wait in day.waits
    )
    unready = with_day(market(), day._replace(waits=waits))
    assert row("Ebb rye", unready).colder == f"Floor under 250? Bake longer, to 97{NBSP}°C core."


def test_if_it_is_hotter_it_says_how_long_a_degree_takes() -> None:
    assert oven().hotter == (
        f"Floor hotter than it wants: wait. It drops 1 °C in about 3{NBSP}min, from 04:19 on in about 7{NBSP}min."
    )
    slower = tuple(
        one._replace(curve=tuple(p._replace(minute=p.minute * 2) for p in one.curve)) for one in market().day.ovens
    )
    assert f"1 °C in about 7{NBSP}min" in oven(with_day(market(), market().day._replace(ovens=slower))).hotter
    assert f"1 °F in about 2{NBSP}min" in oven(house=US).hotter


def test_an_oven_that_holds_its_heat_has_no_curve_and_no_colder_floor() -> None:
    plain = tuple(one._replace(curve=(), climbs=Fraction(2)) for one in market().day.ovens)
    found = oven(with_day(market(), market().day._replace(ovens=plain)))
    assert found.curve is None and not found.hotter and all(not one.colder for one in rows(found))
    assert any("then" in said for one in rows(found) for said in one.then)
    assert found.head == "on Fri 16:37 · 9 loads" and oven().head == "lit Fri 16:37 · 9 loads"


def test_each_line_stands_under_its_date() -> None:
    days = [(line.day, "fire" if line.load is None else line.load.bread) for line in oven().lines if line.day]
    assert days == [("Friday 27 Nov", "fire"), ("Saturday 28 Nov", "Gangway loaf")]


def set_oven(decks: int = 1) -> DayPlan:
    """The market day in an oven that is set, 1 °C a minute up and down; its loads one deck after the other."""
    ovens = tuple(
        one._replace(curve=(), climbs=Fraction(1), sinks=Fraction(1), decks=decks) for one in market().day.ovens
    )
    plan = with_day(market(), market().day._replace(ovens=ovens))
    on = tuple(at % decks for at in range(len(plan.day.loads)))
    return plan._replace(planned=plan.planned._replace(timetable=plan.timetable._replace(decks=on)))


def test_who_switches_it_on_sets_it_and_switches_it_off_is_said_with_clock_and_heat() -> None:
    found = oven(set_oven())
    done = acts(found)
    assert done[0] == ("16:37", f"switch beacon on, to 330{NBSP}°C: 2{NBSP}h 30{NBSP}min until it is hot", "Tom")
    assert ("19:47", f"set beacon to 260{NBSP}°C, for load 2 at Fri 22:27", "Tom") in done
    assert done[-1] == (rows(found)[-1].out, "switch beacon off", "Ines")
    assert sum(does.startswith("switch") for _, does, _ in done) == 2


def test_each_deck_is_named_where_there_are_several() -> None:
    found = oven(set_oven(2))
    assert {one.deck for one in rows(found)} == {"deck 1", "deck 2"}
    said = [does for _, does, _ in acts(found)]
    for deck in ("deck 1", "deck 2"):
        assert sum(does.startswith(f"switch {deck} on, to") for does in said) == 1
        assert said.count(f"switch {deck} off") == 1
    assert all("deck 1" in does or "deck 2" in does for does in said)


def test_two_loads_on_one_deck_are_told_one_heat_that_suits_both() -> None:
    """Ebb rye and Causeway go in together: what they have in common, and not each its own."""
    apart = {load.bread: load.enters for load in market().day.loads}
    one, other = apart["Ebb rye"], apart["Causeway"]
    assert one is not None and other is not None
    cooler = other._replace(low=other.low - 15, high=other.high - 15)
    day = market().day
    loads = tuple(load._replace(enters=cooler) if load.bread == "Causeway" else load for load in day.loads)
    plan = set_oven()
    plan = with_day(plan, plan.day._replace(loads=loads))
    assert row("Ebb rye", plan).floor == row("Causeway", plan).floor
    assert max(one.low, cooler.low) <= Fraction(row("Ebb rye", plan).floor) <= min(one.high, cooler.high)


def thursday() -> DayPlan:
    said = next(plan for plan in demo().plans if plan.name == "Thursday")
    of = day_planned(said, demo()).value
    assert of is not None
    planned = plan_by_hand(of.day)
    assert isinstance(planned, Planned)
    return DayPlan(said, of, planned)


def test_the_next_heat_within_a_bake_is_said_with_its_figure() -> None:
    plan = thursday()
    words = JobWords(plan, works_of(plan), Measures(METRIC, words_of("British")))
    told = [(line.bread, clause.do) for line in map(words.line, range(len(plan.day.jobs))) for clause in line.clauses]
    assert ("Ebb rye", f"set deck to 230{NBSP}°C falling to 205{NBSP}°C") in told
    assert not any("next heat" in does for _, does in told)
    assert {f"switch deck on, to 260{NBSP}°C", "switch deck off"} <= {does for _, does in told}


def test_a_deck_is_off_where_it_would_be_empty_for_long_and_is_on_again_in_time() -> None:
    """On and off by turns, hot for every load, and off for no less than it takes to be hot again."""
    plan = thursday()
    (heats,) = {fire.heats for fire in plan.day.fires}
    switched = [one for one in settings_of(plan) if one.turn is not DeckTurn.TO]
    ons, offs = switched[::2], switched[1::2]
    assert {one.turn for one in ons} == {DeckTurn.ON} and {one.turn for one in offs} == {DeckTurn.OFF}
    assert len(ons) == len(offs) > 1
    for on in ons:
        assert plan.begins(on.job) + heats <= plan.begins(plan.day.loads[on.load].put)
    for off, on in zip(offs, ons[1:], strict=False):
        assert plan.begins(on.job) - plan.begins(off.job) >= heats
    for load in plan.day.loads:
        assert sum(plan.begins(one.job) <= plan.begins(load.put) for one in ons) - 1 == sum(
            plan.begins(one.job) < plan.begins(load.take) for one in offs
        )


def test_what_a_deck_is_switched_on_beside_begins_no_later_than_the_deck_must() -> None:
    plan = thursday()
    again = [one for one in settings_of(plan) if one.by is not None]
    assert again
    for one in again:
        (moment,) = (
            each for shift in range(len(plan.day.shifts)) for each in moments_of(plan, shift) if one.job in each.jobs
        )
        assert plan.begins(one.job) + moment.slip <= (one.by or 0)


def test_what_can_hurt_at_the_door_is_said_once_with_its_source() -> None:
    notes = ovens_page(market(), ISSUE, METRIC).cautions
    assert {"Fire and fumes", "Steam and heat"} <= {note.catchword for note in notes}
    assert len({note.catchword for note in notes}) == len(notes) and all(note.source for note in notes)
