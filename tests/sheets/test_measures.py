"""Figures as a house prints them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from every import every

from manchet.checks.saying import grams
from manchet.formula.model import Range
from manchet.formula.percents import percent
from manchet.quantities.printing import mass_text
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import OUNCE, Measures
from manchet.sheets.page.words import words_of

METRIC = Measures(House(), words_of("British"))
US = Measures(House("Letter", "US", "F", "American"), words_of("American"))


def plain(text: object) -> str:
    return str(text).replace("\N{NO-BREAK SPACE}", " ")


@every(
    [
        (180, 180, "3 min"),
        (60, 75, "60–75 s"),
        (3600, 5400, "60–90 min"),
        (6000, 7800, "100–130 min"),
        (3600, 7200, "1–2 h"),
        (43200, 54000, "12–15 h"),
        (86400, None, "at least 24 h"),
        (None, 600, "at most 10 min"),
        (172800, 259200, "2–3 d"),
        (9000, 9000, "2 h 30 min"),
        (90, 90, "90 s"),
    ],
    at_least=11,
)
def test_times(low: int | None, high: int | None, said: str) -> None:
    ends = Range(None if low is None else Fraction(low), None if high is None else Fraction(high))
    assert plain(METRIC.time(ends)) == said


@pytest.mark.parametrize(
    ("grams", "step", "said"),
    [("1976", "1", "1,976 g"), ("27", "1/10", "27.0 g"), ("0.4", "1/10", "0.4 g"), ("1975", "5", "1,975 g")],
)
def test_a_weight_has_the_digits_of_its_scale(grams: str, step: str, said: str) -> None:
    assert plain(METRIC.weight(Fraction(grams), Fraction(step))) == said


def test_kilograms_have_the_digits_of_the_scale_too() -> None:
    assert plain(METRIC.weight(Fraction(12350), Fraction(5), in_kg=True)) == "12.350 kg"


@pytest.mark.parametrize(
    ("ounces", "said"),
    [
        ("16", "1 lb"),
        ("20", "1 lb 4 oz"),
        ("81/4", "1 lb 4¼ oz"),
        ("1/2", "½ oz"),
        ("67/4", "1 lb ¾ oz"),
        ("0", "0 oz"),
    ],
)
def test_pounds_and_quarter_ounces(ounces: str, said: str) -> None:
    assert plain(US.weight(Fraction(ounces) * OUNCE, OUNCE / 4)) == said


def test_a_light_piece_is_said_in_grams_with_the_ounces_beside() -> None:
    assert plain(US.each(Fraction(60))) == "60 g (2.12 oz)"
    assert plain(US.each(9 * OUNCE)) == "9 oz"
    assert plain(METRIC.each(Fraction(60))) == "60 g"


def test_beside_hours_there_are_no_minutes_alone() -> None:
    said = [
        plain(METRIC.hours(Range(Fraction(low * 60), Fraction(high * 60))))
        for low, high in ((110, 110), (115, 175), (120, 180))
    ]
    assert said == ["1 h 50 min", "1 h 55 min–2 h 55 min", "2–3 h"]


def test_spoons_only_where_the_density_and_the_country_are_known() -> None:
    assert plain(US.spoons(Fraction(6), Fraction(12, 10), "US")) == "about 1 tsp"
    assert plain(US.spoons(Fraction(18), Fraction(12, 10), "metric")) == "about 1 tbsp"
    assert US.spoons(Fraction(6), None, "US") == "" and US.spoons(Fraction(6), Fraction(1), "") == ""


def test_degrees_are_exact_in_the_dough_and_round_in_the_oven() -> None:
    one = Range(Fraction(97), Fraction(97))
    oven = Range(Fraction(255), Fraction(255))
    assert (plain(US.degrees(one)), plain(US.oven(oven))) == ("207 °F", "490 °F")
    assert (plain(METRIC.degrees(one)), plain(METRIC.oven(oven))) == ("97 °C", "255 °C")


def test_per_cent() -> None:
    assert [plain(METRIC.percent(Fraction(x))) for x in ("3/5", "19/1000", "1/3", "3/10000")] == [
        "60 %",
        "1.9 %",
        "33.33 %",
        "0.03 %",
    ]


def test_something_never_prints_as_nothing() -> None:
    m = METRIC
    tiny = Fraction("0.000001")
    for said in (m.mass(tiny), m.grams(tiny), str(m.weight(tiny)), mass_text(tiny), grams(tiny)):
        assert said.replace("\N{NO-BREAK SPACE}", " ") == "0.000001 g"
    assert m.percent(Fraction("0.000001")).startswith("0.0001")
    assert percent(Fraction("0.00000001")) == "0.000001%"
    assert m.mass(Fraction(0)).startswith("0") and mass_text(Fraction(0)) == "0 g"


@pytest.mark.parametrize(
    ("fahrenheit", "printed", "set_to"),
    [("80", "27 °C", "27 °C"), ("0", "−18 °C", "−18 °C"), ("330", "166 °C", "165 °C"), ("375", "191 °C", "190 °C")],
)
def test_what_comes_out_of_fahrenheit_is_no_finer_than_a_dial(fahrenheit: str, printed: str, set_to: str) -> None:
    celsius = (Fraction(fahrenheit) - 32) * Fraction(5, 9)
    assert (plain(METRIC.degrees(Range(celsius, celsius))), plain(METRIC.oven(Range(celsius, celsius)))) == (
        printed,
        set_to,
    )


def test_a_figure_in_celsius_stands_as_it_is_written() -> None:
    assert plain(METRIC.degrees(Range(Fraction("24.5"), Fraction("24.5")))) == "24.5 °C"
    assert plain(METRIC.oven(Range(Fraction(233), Fraction(233)))) == "233 °C"
