"""A baker's own friction on the sheet: the worked examples of the trade come out as printed, in both ways of counting."""

import tomllib
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from every import every
from works import first_work, reports_of

from manchet.figures.derived import figures_of
from manchet.figures.water.water_grid import water_grid, water_of
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.page.issue import Issue
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import house_of

PRINTED = tomllib.loads((Path(__file__).parents[1] / "figures" / "published_water.toml").read_text(encoding="utf-8"))

LOAF = """\
formula Printed example
  kind hearth loaf
  makes 10 loaves at 900 g dough
  overall
    white flour          100%
    water                 65%
    salt                   2%
    instant yeast          1%
{before}
  dough
    {first}
    everything else
    mix slow 8 min to {dough} F
    ferment covered 2 h at 76 F
    divide
    shape round
    prove covered 60 min at 80 F
    bake 35 min at 450 F to 205 F core, steam
    cool 2 h

kitchen Theirs
  air            {room} F
  flour          {flour} F
  tap            50 F
  mixer spiral
    {friction}
"""

POOLISH = """
  poolish with 20% of all flour
    white flour          100%
    water                100%
    instant yeast          0.1%
    mix by hand 3 min
    ripen covered 12-14 h at {} F
"""


def text_of(case: dict[str, Any], friction: str) -> str:
    """Flour, room and starter as the example has them; the sum does not mind which is which."""
    flour, room, *starter = case["others"]
    return LOAF.format(
        before=POOLISH.format(starter[0]) if starter else "",
        first="poolish" if starter else "# no preferment",
        dough=case["dough"],
        room=room,
        flour=flour,
        friction=friction,
    )


def figure_on_the_sheet(text: str) -> str:
    work = first_work(text)
    panel = prep_sheet(work, Issue(), house_of(work.kitchen, PrintOptions())).water
    assert panel is not None
    return panel.figure.replace("\u00a0", " ")


@every(PRINTED["rule"], at_least=6)
def test_the_sheet_asks_for_the_printed_water(case: dict[str, Any]) -> None:
    text = text_of(case, f"friction {case['friction']} F in the sum")
    assert figure_on_the_sheet(text) == f"{case['water']} °F"
    figures = figures_of(first_work(text)).totals
    assert abs(figures["water_celsius"].value - (Fraction(case["water"]) - 32) * 5 / 9) < Fraction(1, 20)
    assert figures["water_by_rule_celsius"].value == figures["water_celsius"].value
    assert "water_celsius_low" not in figures, "the rule has no range"


@every(PRINTED["rule"], at_least=6)
def test_of_the_dough_counts_once_for_each_reading(case: dict[str, Any]) -> None:
    readings = len(case["others"]) + 1
    whole = Fraction(case["friction"])
    of_dough = f"{whole.numerator}/{whole.denominator * readings}" if whole else "0"
    assert figure_on_the_sheet(text_of(case, f"friction {of_dough} F of the dough")) == f"{case['water']} °F"


def test_another_room_goes_by_the_same_rule() -> None:
    work = first_work(text_of(PRINTED["rule"][2], "friction 8 F in the sum"))
    water = water_of(work)
    assert water is not None and water.friction is not None
    for row in water_grid(work):
        for cell in row.cells:
            moved = (row.flour - water.flour) + (cell.room - water.room)
            assert cell.celsius == water.celsius.likely - moved


@pytest.mark.parametrize("measured", ["", "warms 20 F in 8 min slow"])
def test_the_rule_leads_beside_a_measured_mix_too(measured: str) -> None:
    text = text_of(PRINTED["rule"][3], f"friction 35 F in the sum\n    {measured}".rstrip())
    assert figure_on_the_sheet(text) == "65 °F"
    figures = figures_of(first_work(text)).totals
    assert figures["water_celsius"].rule.startswith("3 x dough temperature")
    assert figures["water_by_balance_celsius"].value != figures["water_celsius"].value


def test_how_it_is_counted_must_be_said() -> None:
    reports = reports_of(text_of(PRINTED["rule"][2], "friction 8 F"))
    assert [one.name for one in reports if one.name == "friction-unclear"]
