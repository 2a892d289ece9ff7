"""What a line leaves to whoever bakes, on every form: more as the flour asks, and what may be left out."""

from __future__ import annotations

from loaves import PLAIN_LOAF
from sheets.card_text import lines_of as card_lines
from sheets.home import class_of, taken
from sheets.work import card, lines_of, sheet

from manchet.sheets.page.house import House

ASKED = PLAIN_LOAF.replace(
    "    water                 70%\n",
    "    water                 66-70%, as the flour asks\n    walnuts                8%, optional\n",
).replace(
    "    mix slow 8 min to 25 C",
    "    hold back walnuts\n    mix slow 6 min\n    add walnuts\n    mix slow 2 min to 25 C",
)
MORE = "up to 203\u00a0g more, as the flour asks"


def test_the_sheet_has_the_low_end_and_says_what_stands_by() -> None:
    view = sheet(ASKED)
    (block,) = view.blocks
    (water,) = [row for row in block.rows if row.name == "water"]
    assert (water.weight, water.notes) == ("3,346", (MORE,))
    (walnuts,) = block.aside
    assert walnuts.notes == ("optional",)
    assert any("walnuts (optional)" in line.text for line in lines_of(view))
    assert [(one.name, one.percent) for one in view.overall][1:3] == [
        ("water", "66\u00a0% to 70\u00a0%"),
        ("walnuts (optional)", "8\u00a0%"),
    ]


def test_the_last_mixing_has_a_box_for_what_went_on_top() -> None:
    boxed = [line.text for line in lines_of(sheet(ASKED)) if any(box.label == "on top" for box in line.boxes)]
    assert len(boxed) == 1 and "mix slow 2\u00a0min" in boxed[0]
    assert not any(box.label == "on top" for line in lines_of(sheet(PLAIN_LOAF)) for box in line.boxes)


def test_the_card_says_both() -> None:
    lines = [line for _, line in card_lines(card(ASKED))]
    weights = [weight for line in lines for weight in line.weights]
    weights += [weight for line in lines for clause in line.clauses for weight in clause.weights]
    beside = {weight.name: weight.beside for weight in weights}
    assert beside["water"].endswith(MORE) and beside["walnuts"] == "optional"


def test_the_handout_and_the_class_set_say_both() -> None:
    home = taken(ASKED)
    rows = {row.name: row.notes for stage in home.stages for row in stage.rows}
    assert rows["water"][-1].endswith("g more, as the flour asks") and rows["walnuts"][-1] == "optional"
    assert "walnuts, optional" in home.recipe and "more, as the flour asks" in home.recipe
    names = [row.name for stage in class_of(ASKED, benches=2).stages for row in stage.rows]
    assert any(name.startswith("water, up to ") for name in names) and "walnuts, optional" in names


def test_in_pounds_it_is_in_the_unit_of_its_row() -> None:
    (block,) = sheet(ASKED, House(units="US")).blocks
    (water,) = [row for row in block.rows if row.name == "water"]
    assert water.notes == ("up to 7¼\u00a0oz more, as the flour asks",)
