"""The class set: one side for the teacher; every set the same; the answers, which the learner has not."""

from __future__ import annotations

import io
import json

import pytest
from every import every
from pypdf import PdfReader
from sheets.home import QUAY, US, class_of, plain, taken
from sheets.test_handout import WASHED
from sheets.test_hostile_text import HOSTILE, fields, poisoned, seen, with_mark

from manchet.sheets.forms.class_set.class_set import sets_for
from manchet.sheets.page.json_data import data_of
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.published import schema
from manchet.sheets.registry import form_called, html_of


def grams(weight: str, unit: str) -> float:
    return float(weight.replace(",", "").replace("\N{NARROW NO-BREAK SPACE}", "")) * {"g": 1, "kg": 1000}[unit]


def test_every_set_is_the_same() -> None:
    assert [sets_for(n) for n in (1, 10, 11, 12)] == [3, 12, 14, 15]
    view = class_of(benches=12)
    assert view.sets == "15 sets: 12 benches, 1 to show, 2 spare"
    for stage in view.stages:
        for row in stage.rows:
            assert grams(row.all_weight, row.all_unit) == pytest.approx(15 * grams(row.weight, row.unit), rel=0.001), (
                row
            )


def test_a_tick_for_each_set_where_they_fit_on_a_line() -> None:
    assert class_of(benches=4).ticks == ("1", "2", "3", "4", "show", "spare")
    assert len(class_of(benches=13).ticks) == 16 and class_of(benches=14).ticks == ()
    assert len(class_of(benches=40).benches) == 40


def test_a_set_weighs_what_the_handout_weighs() -> None:
    view, home = class_of(), taken()
    ours = {(stage.title, row.name): (row.weight, row.unit) for stage in view.stages for row in stage.rows}
    theirs = {
        (stage.title, row.name): (row.weight, row.unit)
        for stage in home.stages
        for row in stage.rows
        if row.name != "poolish"
    }
    assert {key: grams(*value) for key, value in ours.items()} == {key: grams(*value) for key, value in theirs.items()}


def test_what_touches_the_bread_is_weighed_out_too() -> None:
    text = QUAY.replace(
        "    divide\n", "    divide\n    grease trays with butter 24 g in all\n    dust with rice flour 3 g each\n"
    )
    stage = class_of(text).stages[-1]
    assert stage.title == "for filling, brushing, dusting, greasing"
    # 2 loaves of the 24: 2 g of the butter; 15 sets.
    assert {row.name: (row.weight, row.all_weight) for row in stage.rows} == {
        "butter": ("2", "30"),
        "rice flour": ("6", "90"),
    }


def test_a_preparation_is_weighed_out_for_itself() -> None:
    view = class_of(WASHED)
    whole = {row.name: row.all_weight for stage in view.stages if stage.title == "egg wash" for row in stage.rows}
    assert whole == {"eggs": "298.5", "milk": "60.0", "salt": "1.5"}
    assert not [
        row for stage in view.stages if stage.title != "egg wash" for row in stage.rows if row.name == "egg wash"
    ]


def test_two_waters_say_which() -> None:
    text = QUAY.replace("hold back salt", "hold back salt and water 5%").replace("add salt", "add salt and water")
    names = [row.name for row in class_of(text).stages[1].rows]
    assert len(names) == len(set(names)) and "water" in names and "water later" in names


def test_the_answers_stand_on_it() -> None:
    view = class_of()
    assert [(one.name, plain(one.percent)) for one in view.answers][:2] == [
        ("white flour", "90 %"),
        ("whole rye flour", "10 %"),
    ]
    assert "Answers to the blanks" in seen(html_of(view)).text


@every([(1,), (4,), (8,), (12,)], at_least=4)
def test_it_is_one_side(benches: int) -> None:
    made = pdf_of(html_of(class_of(benches=benches)), form_called("class").layouts)
    assert isinstance(made, Pdf) and made.faults == () and made.missing == ()
    assert len(PdfReader(io.BytesIO(made.content)).pages) == 1


def test_its_cells_are_headed() -> None:
    """Every `headers` names cells that are there, once each."""
    import re

    page = html_of(class_of(WASHED, 4))
    ids = re.findall(r'<th[^>]* id="([^"]+)"', page)
    assert len(ids) == len(set(ids))
    named = {name for headers in re.findall(r'headers="([^"]+)"', page) for name in headers.split()}
    assert named and named <= set(ids)


def test_the_data_fits_the_schema() -> None:
    import jsonschema

    for house in (None, US):
        view = class_of() if house is None else class_of(house=house)
        jsonschema.validate(json.loads(json.dumps(data_of(view))), schema())


def test_every_text_of_it_is_printed_and_stays_text() -> None:
    view = class_of(WASHED, 2)
    page = html_of(view)
    ours = (".language", ".paper", ".form", ".was")
    paths = [path for path in fields(view) if not path.endswith(ours)]
    assert [path for path in paths if html_of(with_mark(view, path.strip(".").split("."), "QQQ")) == page] == []
    assert seen(html_of(poisoned(view))).tags == seen(page).tags and HOSTILE in seen(html_of(poisoned(view))).text
