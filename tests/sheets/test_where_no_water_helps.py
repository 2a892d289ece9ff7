"""Doughs that no water sets: the sheet says what they come to and what else to cool, and `check` says the same."""

import pytest
from works import first_work, reports_of

from manchet.figures.derived import figures_of
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.prep_sheet.view import WaterPanel
from manchet.sheets.page.issue import Issue
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import house_of

KITCHEN = """
kitchen Back room
  air            24 C
  flour          22 C
  tap            14 C
  fridge cold
    keeps         4 C
  mixer spiral
    warms         11 C in 8 min slow, 4 min fast
"""

HEAD = """\
formula Tried
  makes 10 loaves at 900 g dough
"""

BAKED = """\
    ferment covered 60 min at 28 C
    divide
    shape round
    prove covered 60-70 min at 28 C
    bake 40 min at 220 C to 97 C core
    cool 24 h
"""

SCALDED = (
    HEAD
    + """\
  kind hearth loaf
  overall
    white flour          100%
    water                 60%
    salt                   2%
    fresh yeast            1.5%
  scald with 20% of all flour
    white flour          100%
    water                200% at 98 C
    mix by hand 3 min
  dough
    scald
    everything else
    mix slow 8 min
    mix fast 4 min to 24 C
"""
    + BAKED
    + KITCHEN
)

DRY_RYE = (
    HEAD
    + """\
  kind rye hearth loaf
  overall
    whole rye flour      100%
    water                 68%
    salt                   2%
  levain with 60% of all flour
    whole rye flour      100%
    water                105%
    ripe rye starter      10%, counted as whole rye flour
    mix by hand 5 min
    ripen covered 3-4 h at 34 C
  dough
    levain
    everything else
    mix slow 8 min to 24 C
"""
    + BAKED
    + KITCHEN
)

BRIOCHE = (
    HEAD
    + """\
  kind soft
  overall
    white flour          100%
    eggs                  50%
    butter                50%
    sugar                 12%
    salt                   2%
    fresh yeast            4%
  dough
    everything else
    mix slow 8 min
    mix fast 12 min to 20 C
"""
    + BAKED
    + KITCHEN
)


def panel(text: str) -> WaterPanel:
    work = first_work(text)
    found = prep_sheet(work, Issue(), house_of(work.kitchen, PrintOptions())).water
    assert found is not None
    return found


def said(text: str) -> str:
    found = panel(text)
    return " ".join((found.figure, found.spread, *found.notes)).replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("text", "report", "cooled"),
    [
        (
            SCALDED.replace(" 60%", " 80%").replace("20%", "25%").replace("to 24 C", "to 22 C"),
            "ice-not-enough",
            "scald",
        ),
        (DRY_RYE, "nothing-sets-the-dough", "levain"),
    ],
)
def test_the_sheet_and_check_say_what_to_cool(text: str, report: str, cooled: str) -> None:
    (found,) = [one for one in reports_of(text) if one.name == report]
    assert f"cool the {cooled} to about " in found.help
    to = found.help.partition("to about ")[2].partition(" C")[0]
    assert f"cool the {cooled} to about {to} °C first" in said(text)
    out = found.message.partition("comes out at about ")[2].partition(" C")[0]
    assert f"about {round(float(out))} °C" in said(text)


@pytest.mark.parametrize("text", [SCALDED, DRY_RYE, BRIOCHE])
def test_no_rule_asks_for_water_below_freezing(text: str) -> None:
    assert panel(text).rule == ""
    figures = figures_of(first_work(text)).totals
    assert all(figure.value >= 0 for name, figure in figures.items() if name.startswith("water_by_rule"))


def test_cooled_as_it_is_told_the_dough_comes_out_as_wanted() -> None:
    (found,) = [one for one in reports_of(DRY_RYE) if one.name == "nothing-sets-the-dough"]
    to = found.help.partition("to about ")[2].partition(" C")[0]
    cooled = DRY_RYE.replace("    levain\n    every", f"    all of the levain at {to} C\n    every")
    assert cooled != DRY_RYE
    assert not [one for one in reports_of(cooled) if one.name == "nothing-sets-the-dough"]
    assert "comes out at about 24 °C." in said(cooled)


def test_a_brioche_says_how_warm_it_comes_out() -> None:
    assert "dough comes out at about " in said(BRIOCHE)


def test_ice_past_a_third_is_told() -> None:
    text = SCALDED.replace("20%", "8%").replace("98 C", "60 C").replace("to 24 C", "to {} C")
    names = {degrees: [one.name for one in reports_of(text.format(degrees))] for degrees in range(12, 34)}
    told = [d for d, found in names.items() if "ice-past-a-third" in found]
    assert told, "some warmth takes that much ice"
    assert all("ice-past-a-third" not in found for d, found in names.items() if d > max(told))
    assert not [d for d, found in names.items() if "ice-past-a-third" in found and "ice-not-enough" in found]
