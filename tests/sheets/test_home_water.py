"""What a handout says of the water: by hand, in the kitchen's room or a usual one, which is said aloud."""

import re

import pytest
from loaves import PLAIN_LOAF, vary
from works import work_in

from manchet.figures.water.home_water import home_waters
from manchet.sheets.forms.handout.water import home_water
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

LOAF = vary(
    PLAIN_LOAF,
    makes="2 loaves at 850 g dough",
    mix="slow 5 min\n    mix fast 5 min to 25 C",
    ferment="covered 90 min at 24 C",
    prove="covered 60 min at 24 C",
    bake="35 min at 230 C",
)
SCALD = """
  scald with 10% of all flour
    white flour 100%
    water 200%
      at 100 C
    mix by hand 2 min
    rest covered 30 min
"""


def said(kitchen: str = "", scald: bool = False, house: House | None = None) -> str:
    house = house or House()
    loaf = LOAF.replace("  dough\n", f"{SCALD}  dough\n    scald\n") if scald else LOAF
    bakery = read([SourceText("loaf.bake", loaf + kitchen)])
    work = work_in(bakery, bakery.formulas[0])
    waters = home_waters(work)
    (line,) = home_water(waters["dough"], Measures(house, words_of(house.words)))
    return line.replace("\u00a0", " ")


def test_a_usual_room_is_taken_and_said() -> None:
    """By hand nothing is worked into it; wetting warms 1 kg of flour and 700 g of water by 3 C: water a little under the dough."""
    found = re.fullmatch(r"water at (\d+) °C if room and flour 21 °C", said())
    assert found is not None and 23 <= int(found[1]) <= 26
    assert re.fullmatch(r"water at 7\d °F if room and flour 70 °F", said(house=House(degrees="F")))


def test_the_kitchens_own_room_and_what_goes_in_hot() -> None:
    assert "if room 16 °C, flour 14 °C" in said("kitchen Mine\n  air 16 C\n  flour 14 C\n")
    hot = said(scald=True)
    assert re.search(r"scald at [5-7]\d °C$", hot), hot


@pytest.mark.parametrize(("air", "reached"), [("-30", "water at 60 °C: about"), ("21", "")])
def test_where_no_water_does_it_a_sentence_says_so(air: str, reached: str) -> None:
    text = said(f"kitchen Mine\n  air {air} C\n  flour {air} C\n")
    assert text.startswith("water alone cannot bring it to 25 °C") == bool(reached) and reached in text
