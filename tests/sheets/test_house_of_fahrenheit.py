"""A kitchen that writes its own temperatures in F: sheet, card and reports in F, the file's C turned into it."""

import re
from datetime import datetime

import pytest
from loaves import POOLISH_LOAF, vary

from manchet.kitchen.model import PLAIN
from manchet.sheets.page.house import House
from manchet.source.text import SourceText
from manchet.timing.when import When
from manchet.workspace.bakery import read
from manchet.workspace.file_versions import Version
from manchet.workspace.press import Press
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import house_of, render_formula

LOAF = vary(
    POOLISH_LOAF,
    makes="12 loaves at 500 g dough",
    mix_slow="5 min\n    mix fast 5 min to 76 F",
    ferment="covered 60 min at 76 F",
    prove="covered 10 h at 4 C",
    bake="35 min at 450 F to 205 F core, steam, vent open after 10 min",
).replace("    prove", "    retard")
LOAF += """
kitchen Hot house
  {air}
  flour    {flour}
  tap      {tap}
"""

FAHRENHEIT = LOAF.format(air="air 84 F", flour="82 F", tap="70 F")
CELSIUS = LOAF.format(air="air 29 C", flour="28 C", tap="21 C")


def printed(text: str, **asked: str) -> str:
    """Sheet and card as one text."""
    bakery = read([SourceText("loaf.bake", text)])
    (formula,) = bakery.formulas
    options = PrintOptions(
        kinds=("sheet", "card"), formats=("html",), when=When(datetime(2026, 11, 27, 20, 0), False), **asked
    )  # type: ignore[arg-type]
    files = render_formula(bakery, formula, options, Version("loaf.bake", ""), Press()).files
    return re.sub(r"<style>.*?</style>", "", "".join(content.decode() for content in files.values()), flags=re.S)


def test_all_of_it_is_in_fahrenheit() -> None:
    page = printed(FAHRENHEIT)
    assert "°F" in page and "°C" not in page
    assert "72\u00a0°F" in page and "68\u00a0°F" in page, "what the file writes in C too"


def test_a_house_of_celsius_stays_so() -> None:
    page = printed(CELSIUS)
    assert "°C" in page and "°F" not in page


def test_the_command_decides() -> None:
    assert "°C" not in printed(CELSIUS, degrees="F")
    assert "°F" not in printed(FAHRENHEIT, degrees="C")


def test_what_says_nothing_is_celsius() -> None:
    assert house_of(PLAIN, PrintOptions()) == House()


@pytest.mark.parametrize(("text", "said"), [(FAHRENHEIT, "Hot house is at 84 F"), (CELSIUS, "Hot house is at 29 C")])
def test_reports_say_the_room_as_the_kitchen_does(text: str, said: str) -> None:
    (report,) = [d for d in read([SourceText("loaf.bake", text)]).diagnostics if d.name == "room-far-from-written"]
    assert said in report.message
    assert (" C" in report.message + report.help) == said.endswith("C")
