"""The trade's rule and the ice rule against examples and a table in print; what is printed wrong has to differ."""

import tomllib
from fractions import Fraction
from pathlib import Path
from typing import Any

from every import every

from manchet.figures.water import base_temperature
from manchet.figures.water.heat import WATER
from manchet.figures.water.ice import ice_in
from manchet.quantities.units import in_fahrenheit

PRINTED = tomllib.loads(
    (Path(__file__).parent / "published_water.toml").read_text(encoding="utf-8"), parse_float=Fraction
)


def celsius(fahrenheit: Fraction) -> Fraction:
    return (Fraction(fahrenheit) - 32) * 5 / 9


def agrees(ours: Fraction, case: dict[str, Any]) -> None:
    assert abs(ours - case["ice"]) <= case["within"], float(ours)
    if "slip" in case:
        assert abs(ours - case["slip"]) > case["within"], case["why"]


@every(PRINTED["rule"], at_least=6)
def test_the_rule_gives_the_printed_water(case: dict[str, Any]) -> None:
    dough, others = Fraction(case["dough"]), [Fraction(other) for other in case["others"]]
    assert base_temperature.water(dough, others, Fraction(case["friction"])) == case["water"]
    if "base_before_friction" in case:
        assert base_temperature.base(dough, len(others) + 1, Fraction(0)) == case["base_before_friction"]


@every(PRINTED["rule"], at_least=6)
def test_the_rule_is_the_same_in_celsius(case: dict[str, Any]) -> None:
    """Friction is a difference: 18 F of it are 10 C."""
    others = [celsius(other) for other in case["others"]]
    water = base_temperature.water(celsius(case["dough"]), others, Fraction(case["friction"]) * 5 / 9)
    assert water == celsius(case["water"])


@every(PRINTED["rule"], at_least=6)
def test_friction_comes_back_from_a_finished_mix(case: dict[str, Any]) -> None:
    readings = [Fraction(reading) for reading in (*case["others"], case["water"])]
    assert base_temperature.friction(Fraction(case["dough"]), readings) == case["friction"]


def test_friction_read_the_wrong_way_is_wrong_by_two_thirds() -> None:
    of_dough = Fraction(6)
    assert base_temperature.in_the_sum(of_dough, 3) == 18
    assert base_temperature.in_the_dough(base_temperature.in_the_sum(of_dough, 3), 3) == of_dough


def test_a_base_in_fahrenheit_is_the_sum_of_readings_in_fahrenheit() -> None:
    readings = [Fraction(19), Fraction(21), Fraction(12)]
    assert in_fahrenheit(sum(readings, Fraction(0)), 3) == sum(r * 9 / 5 + 32 for r in readings)


@every(PRINTED["ice"], at_least=2)
def test_ice_in_place_of_water(case: dict[str, Any]) -> None:
    turn = celsius if case["unit"] == "F" else Fraction
    agrees(ice_in(Fraction(case["water"]), turn(case["tap"]), turn(case["wanted"])), case)


@every(PRINTED["added"], at_least=2)
def test_ice_on_top_of_water(case: dict[str, Any]) -> None:
    """On top of so much water, so much ice is printed: of the two together the rule must make the same share ice."""
    water, tap, wanted, below, ice = (Fraction(case[name]) for name in ("water", "tap", "wanted", "below", "ice"))
    agrees(ice_in(water + ice, tap, wanted, below), case)


@every(PRINTED["table"]["rows"], at_least=14)
def test_the_printed_ice_table(row: list[Fraction]) -> None:
    tap, wanted, printed = row
    assert abs(ice_in(Fraction(1), celsius(tap), celsius(wanted)) - printed) <= PRINTED["table"]["within"]


def test_heat_of_wetting_of_a_dough() -> None:
    """2 kg flour and 1 kg water give off 15 kJ a kg of dough: water at 4.2 C keeps it at 15 C (Cengel and Boles,
    Thermodynamics, problem 5-157; the answer is worked out from it)."""
    wetting = Fraction(15) * 3
    assert abs(15 - wetting / (1 * WATER) - Fraction("4.2")) < Fraction("0.05")
