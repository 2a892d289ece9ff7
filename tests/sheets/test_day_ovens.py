"""The oven card of a planned day: clocks, floors and what to do if they are others than planned."""

from __future__ import annotations

from fractions import Fraction

from day.market import market, number_of, with_day, with_starts
from sheets.each_form import ISSUE, METRIC, US

from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.forms.day_oven.ovens_page import ovens_page
from manchet.sheets.forms.day_oven.view import OvenOfDay, OvenRow
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import NBSP


def oven(plan: DayPlan | None = None, house: House = METRIC) -> OvenOfDay:
    (found,) = ovens_page(plan or market(), ISSUE, house).ovens
    return found


def row(bread: str, plan: DayPlan | None = None, house: House = METRIC) -> OvenRow:
    return next(one for one in oven(plan, house).rows if one.bread == bread)


def test_the_fire_and_then_each_load_by_the_clock() -> None:
    assert [(fire.clock, fire.does, fire.floor) for fire in oven().fires] == [
        ("16:37", f"Light the fire, to 330{NBSP}°C: 2{NBSP}h 30{NBSP}min", ""),
        ("19:07", "Fire out", "330"),
    ]
    assert [(one.number, one.clock, one.out) for one in oven().rows][:3] == [
        ("1", "19:36", "19:47"), ("2", "22:27", "23:22"), ("3", "22:31", "23:16"),
    ]  # fmt: skip
    assert [one.clock for one in oven().rows] == sorted((one.clock for one in oven().rows), key=lambda c: (c < "12", c))


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
    assert all(int(one.floor) % 5 == 0 for one in oven().rows)


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
    assert found.curve is None and not found.hotter and all(not one.colder for one in found.rows)
    assert any("then" in said for one in found.rows for said in one.then)
    assert found.head == "on Fri 16:37 · 9 loads" and oven().head == "lit Fri 16:37 · 9 loads"


def test_what_can_hurt_at_the_door_is_said_once_with_its_source() -> None:
    notes = ovens_page(market(), ISSUE, METRIC).cautions
    assert {"Fire and fumes", "Steam and heat"} <= {note.catchword for note in notes}
    assert len({note.catchword for note in notes}) == len(notes) and all(note.source for note in notes)
