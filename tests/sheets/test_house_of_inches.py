"""A house that measures its tins in inches, or weighs in pounds: one way a sheet, one way a table; and degrees in F."""

import re
from fractions import Fraction

import pytest
from sheets.work import lines_of
from works import work_in

from manchet.figures.degrees import beside, with_fahrenheit
from manchet.figures.figure import Figure, Given
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.prep_sheet.view import PrepSheet
from manchet.sheets.page.issue import Issue
from manchet.source.text import SourceText
from manchet.workspace.bakery import read
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import house_of

LOAF = """
kitchen Home
  air 70 F
  scale bench
    reads 1 g
    up to 5 kg
  tin loaf tin
    {inside}

formula Tin loaf
  kind tin loaf
  makes 4 loaves at 700 g dough
  overall
    white flour 100%
    water 65%
    salt 2%
    instant yeast 0.6%
  dough
    everything else
    mix by hand 8 min to 78 F
    ferment covered 90 min at 76 F
    divide
    shape long
    place in loaf tin
    prove covered 60 min at 80 F to 0.75 inch below the rim
    bake 35 min at 400 F to 200 F core
    cool 2 h
"""


def sheet(inside: str, units: str, text: str = LOAF) -> PrepSheet:
    bakery = read([SourceText("loaf.bake", text.format(inside=inside))])
    work = work_in(bakery, bakery.formulas[0])
    return prep_sheet(work, Issue(), house_of(work.kitchen, PrintOptions(units=units)))


def proof(printed: PrepSheet) -> tuple[str, str]:
    (line,) = [line for line in lines_of(printed) if "below the rim" in line.text]
    return line.text.replace("\u00a0", " "), next(box.unit for box in line.boxes if box.label == "rim")


@pytest.mark.parametrize(
    ("inside", "units", "length", "unit"),
    [
        ("inside 9 x 5 x 3 inch", "metric", "to ¾ in below the rim", "in"),
        ("inside 23 x 13 x 8 cm", "metric", "to 19 mm below the rim", "mm"),
        ("inside 23 x 13 x 8 cm", "US", "to ¾ in below the rim", "in"),
    ],
)
def test_lengths_are_said_as_the_house_measures(inside: str, units: str, length: str, unit: str) -> None:
    text, box = proof(sheet(inside, units))
    assert length in text and box == unit


def test_a_table_in_pounds_is_said_in_one_way() -> None:
    """On the platform pounds and quarters of an ounce; on the fine scale grams, with the ounces beside them."""
    text = LOAF.replace("    up to 5 kg\n", "    up to 5 kg\n  scale fine\n    reads 0.1 g\n    up to 300 g\n")
    rows = sheet("inside 9 x 5 x 3 inch", "US", text).blocks[0].rows
    said = [f"{row.weight} {row.unit}".replace("\u00a0", " ") for row in rows]
    coarse = [weight for weight, row in zip(said, rows, strict=True) if not row.fine]
    fine = [(weight, row.aside) for weight, row in zip(said, rows, strict=True) if row.fine]
    assert len(coarse) == len(fine) == 2
    assert all(re.fullmatch(r"(\d+ lb )?\d*[¼½¾]? oz|\d+ lb", weight) for weight in coarse), coarse
    assert all(re.fullmatch(r"[\d.]{2,4} g", weight) and aside.endswith("oz") for weight, aside in fine), fine


def test_what_is_traced_in_a_house_of_fahrenheit() -> None:
    water = Given("water temperature", Fraction(25), "C", "")
    friction = Given("friction", Fraction(10), "C", "")
    base = Figure("base temperature", Fraction(60), "C", "", (water, water, water), "")
    assert [beside(one, "F") for one in (water, friction, base)] == [" (77 F)", " (18 F)", " (204 F)"]
    assert beside(water, "C") == beside(water, "") == ""
    assert with_fahrenheit("an estimate, 20 to 25 C: by half", "F") == "an estimate, 20 to 25 C (68 to 77 F): by half"
    assert with_fahrenheit("poolish, ripen at 20 C", "F") == "poolish, ripen at 20 C (68 F)"
