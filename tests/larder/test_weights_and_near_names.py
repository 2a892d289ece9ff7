"""What an amount weighs; its reports made by the larder alone."""

from __future__ import annotations

from fractions import Fraction

from every import every
from larder.house_texts import ingredient_called, reports_on

from manchet.diagnostics.catalogue import explain
from manchet.diagnostics.names import REPORTS
from manchet.larder.book import builtin
from manchet.larder.densities import weight_of
from manchet.source.text import Line
from manchet.syntax.nodes import Amount

LINE = Line("a.bake", 1, "x 1 cup", 0, "x 1 cup", "")


def weight(figure: str, unit: str, name: str, measures: str = "") -> tuple[Fraction | None, list[str]]:
    amount = Amount(Fraction(figure), Fraction(figure), unit, 2, 7)
    grams, reports = weight_of(amount, ingredient_called(builtin(), name), measures, LINE)
    return grams, [report.name for report in reports]


def test_weights_need_nothing() -> None:
    assert weight("2", "kg", "hazelnuts") == (2000, [])
    assert weight("1", "lb", "hazelnuts") == (Fraction("453.59237"), [])


def test_a_millilitre_of_water_is_a_gram() -> None:
    assert weight("250", "ml", "water") == (250, [])
    grams, reports = weight("1", "gal", "water", "US")
    assert (grams, reports) == (Fraction("3785.411784"), [])


def test_other_volumes_go_through_the_density() -> None:
    grams, reports = weight("100", "ml", "olive oil")
    assert reports == []
    assert grams is not None and 90 < grams < 93
    assert weight("100", "ml", "hemp seeds") == (None, ["density-unknown"])


def test_a_count_goes_through_the_weight_of_one() -> None:
    assert weight("5", "whole", "eggs") == (250, [])
    assert weight("2", "whole", "apples") == (None, ["weight-of-one-unknown"])


def test_cups_and_spoons_are_of_a_country_and_vary() -> None:
    assert weight("1", "cup", "white flour") == (None, ["measure-of-no-country"])
    assert weight("1", "pt", "water") == (None, ["measure-of-no-country"])
    assert weight("1", "cup", "white flour", "imperial") == (None, ["measure-of-no-country"])
    grams, reports = weight("1", "cup", "white flour", "US")
    assert reports == ["measured-by-spoon"]
    assert grams is not None and 120 < grams < 130  # USDA SR28 NDB 20481: 125 g


def test_something_made_here_can_only_be_weighed() -> None:
    amount = Amount(Fraction(1), Fraction(1), "l", 2, 5)
    assert [report.name for report in weight_of(amount, None, "US", LINE).diagnostics] == ["density-unknown"]
    assert weight_of(amount._replace(unit="kg"), None, "US", LINE).value == 1000


OF_THE_LARDER = [name for name, (_, folder) in REPORTS.items() if folder == "larder/reports"]


@every(OF_THE_LARDER, at_least=30)
def test_the_larder_alone_gives_each_of_its_reports(name: str) -> None:
    case = explain(name)
    assert case is not None
    if case.mistake:
        (report,) = reports_on(case.mistake)
        assert (report.name, report.severity.value) == (name, case.severity)
        assert report.message == report.message.strip() and report.help
        assert [report.message for report in reports_on(case.put_right)] == []
