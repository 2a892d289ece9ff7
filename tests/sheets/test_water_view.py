"""The water on the sheet: what is printed adds up as the baker will add it, and blanks stay blank."""

import re

from loaves import KITCHEN, PLAIN_LOAF, vary
from works import work_in

from manchet.figures.water.water_grid import water_of
from manchet.sheets.forms.prep_sheet.view import WaterPanel
from manchet.sheets.forms.prep_sheet.water_panel import water_panel
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

LOAF = vary(PLAIN_LOAF, makes="20 loaves at 900 g dough", water="68%", mix="slow 5 min\n    mix fast 3 min to 24 C")

WARM_HOUSE = vary(KITCHEN, air="28 C", flour="26 C", tap="18 C")
WARM_HOUSE += "  mixer spiral\n    warms         11 C in 8 min slow, 4 min fast\n"

METRIC = House()
AMERICAN = House("Letter", "US", "F", "American")


def view(house: House = METRIC, kitchen: str = WARM_HOUSE, loaf: str = LOAF) -> WaterPanel:
    bakery = read([SourceText("loaf.bake", loaf + kitchen)])
    work = work_in(bakery, bakery.formulas[0])
    water = water_of(work)
    assert water is not None
    return water_panel(water, work, Measures(house, words_of(house.words)))


def figures(text: str) -> list[int]:
    """The temperatures in a text, without what ice weighs."""
    return [int(figure) for figure in re.findall(r"(-?\d+)\u00a0°", text)]


def test_water_flour_and_room_add_up_to_the_base_as_printed() -> None:
    for house in (METRIC, AMERICAN):
        printed = view(house)
        (base,), (water,) = figures(printed.rule), figures(printed.figure)
        (flour,), (room,) = figures(printed.flour), figures(printed.room)
        assert base == water + flour + room


def test_the_grid_is_small_and_its_middle_is_the_figure() -> None:
    printed = view()
    assert [len(row.cells) for row in printed.rows] == [3, 3, 3] and len(printed.rooms) == 3
    middle = printed.rows[1].cells[1]
    assert middle.figure in printed.figure and middle.ice and middle.ice in printed.figure
    assert [cell.assumed for row in printed.rows for cell in row.cells] == [False] * 4 + [True] + [False] * 4
    assert printed.rows[1].flour == "26\u00a0°C" and printed.rooms[1] == "28\u00a0°C"


def test_fahrenheit_goes_by_eight_and_ice_by_the_ounce() -> None:
    printed = view(AMERICAN)
    rooms = [figures(room)[0] for room in printed.rooms]
    assert (rooms[1] - rooms[0], rooms[2] - rooms[1]) == (8, 8)
    assert "oz" in printed.rows[2].cells[2].ice or "lb" in printed.rows[2].cells[2].ice


def test_ice_is_said_to_be_part_of_the_water_and_has_no_false_digit() -> None:
    printed = view()
    assert any("part of the water" in note for note in printed.notes)
    for row in printed.rows:
        for cell in row.cells:
            assert not re.search(r"\d\.\d", cell.ice)
            assert not cell.figure.startswith("-")


def test_no_ice_no_word_of_it() -> None:
    printed = view(kitchen=WARM_HOUSE.replace("26 C", "16 C").replace("28 C", "16 C").replace("18 C", "6 C"))
    assert all(not cell.ice for row in printed.rows for cell in row.cells)
    assert not any("Ice" in note for note in printed.notes)


def test_a_house_of_no_temperatures_gets_base_and_rule_alone() -> None:
    printed = view(kitchen="")
    assert figures(printed.rule) and printed.rule.startswith("water = ")
    assert (printed.figure, printed.flour, printed.spread, printed.rooms, printed.rows) == ("", "", "", (), ())


def plain(*texts: str) -> str:
    return " ".join(texts).replace("\u00a0", " ")


def test_where_none_is_cold_enough_a_whole_sentence_says_what_is_reached() -> None:
    milk = view(loaf=LOAF.replace("water  ", "whole milk  "), kitchen=WARM_HOUSE.replace("26 C", "38 C"))
    assert milk.figure == "not even ice water is cold enough"
    assert re.match(
        r"whole milk at 0 °C: about \d\d °C: cool the white flour to about \d\d °C first, or write a warmer dough",
        plain(milk.spread),
    )
    hot = WARM_HOUSE.replace("26 C", "70 C").replace("28 C", "70 C")
    water = view(loaf=LOAF.replace("to 24 C", "to 4 C").replace("68%", "45%"), kitchen=hot)
    assert plain(water.spread).startswith("all of it ice: about")


def test_where_none_is_hot_enough_the_hottest_tap_is_told() -> None:
    cold = WARM_HOUSE.replace("26 C", "-10 C").replace("28 C", "2 C")
    printed = view(kitchen=cold, loaf=LOAF.replace("to 24 C", "to 40 C"))
    assert re.search(r"hotter than the tap: water at 60 °C: about \d+ °C", plain(printed.spread))
    never = view(kitchen=cold.replace("-10", "-60"), loaf=LOAF.replace("to 24 C", "to 40 C"))
    assert never.figure == "not even hot tap water" and "water at 60 °C" in plain(never.spread)
    assert "warm the flour" in never.spread and never.rows[1].cells[1].figure == "not reachable: too cold"


SCALD = """\
  scald with 15% of all flour
    white flour          100%
    water                200%
      at 100 C
    mix by hand 3 min
    rest covered 30 min

  dough
    scald
"""


def test_a_hot_scald_is_read_and_what_was_taken_of_it_is_shown() -> None:
    text = LOAF.replace("  dough\n", SCALD)
    printed = view(loaf=text, kitchen=WARM_HOUSE.replace("28 C", "20 C").replace("26 C", "20 C"))
    (hot,) = printed.hot
    assert hot.name == "scald" and re.fullmatch(r"assumed 7\d °C", plain(hot.taken))
    assert re.fullmatch(r"about \d\d–\d\d °C, cooling in the room; 5 °C warmer: .* more ice", plain(hot.beside))
    assert re.match(r"[\d,]+ g to [\d,]+ g", plain(printed.spread)) and plain(printed.flour) == "20 °C"
    fahrenheit = view(AMERICAN, loaf=text, kitchen=WARM_HOUSE.replace("28 C", "20 C").replace("26 C", "20 C"))
    assert "10 °F warmer" in plain(fahrenheit.hot[0].beside) and "°C" not in fahrenheit.hot[0].taken
