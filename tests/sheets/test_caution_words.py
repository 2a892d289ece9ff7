"""The words of a caution in the units and the English of a sheet: every figure of it is turned, none is parsed from a sentence."""

from __future__ import annotations

from fractions import Fraction

import pytest
from works import bakery_of, works

from manchet.cautions.caution import caution
from manchet.cautions.hazards import HAZARDS
from manchet.cautions.phrase import LocalWord, Measured, wording_of
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.caution import caution_note, said_in_units, sources_once
from manchet.sheets.registry import html_of

METRIC = Measures(House(), words_of("British"))
US = Measures(House("Letter", "US", "F", "American"), words_of("American"))


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


EXACT = (
    (-40, -40),
    (-20, -4),
    (-10, 14),
    (0, 32),
    (5, 41),
    (10, 50),
    (20, 68),
    (35, 95),
    (60, 140),
    (75, 167),
    (100, 212),
    (190, 374),
)
"""Pairs that are exact by definition: F = 9/5 C + 32."""

OF_THE_FOOD_CODE = ((4, 39), (21, 70), (57, 135), (63, 145), (71, 160), (74, 165))
"""As the US Food Code writes its Celsius beside Fahrenheit (3-401.11, 3-501.14, 3-501.16); 4 C to the nearest degree."""


@pytest.mark.parametrize(("celsius", "fahrenheit"), EXACT + OF_THE_FOOD_CODE)
def test_degrees(celsius: int, fahrenheit: int) -> None:
    wording = wording_of(f"{{C:{celsius}}} or colder")
    said = (plain(said_in_units(wording, METRIC)), plain(said_in_units(wording, US)))
    assert said == tuple(
        f"{figure} {unit} or colder".replace("-", "−") for figure, unit in ((celsius, "°C"), (fahrenheit, "°F"))
    )


@pytest.mark.parametrize(
    ("template", "metric", "us"),
    [
        ("{h:2}, {h:24}", "2 h, 24 h", "2 h, 24 h"),
        ("{min:20} and {min:90}", "20 min and 90 min", "20 min and 90 min"),
        ("{days:4} at most", "4 days at most", "4 days at most"),
        ("{percent:3 to 4} lye", "3–4 % lye", "3–4 % lye"),
        ("{C:2 to 5}", "2–5 °C", "36–41 °F"),
        ("{cm:5} deep", "5 cm deep", "2 in deep"),
        ("over {kg:16}, over {kg:25}", "over 16 kg, over 25 kg", "over 35 lb, over 55 lb"),
        ("call {emergency}", "call 112/999", "call 911"),
        ("vitamin C and 20 C", "vitamin C and 20 C", "vitamin C and 20 C"),
    ],
)
def test_other_units(template: str, metric: str, us: str) -> None:
    wording = wording_of(template)
    assert (plain(said_in_units(wording, METRIC)), plain(said_in_units(wording, US))) == (metric, us)


def test_a_template_in_its_parts() -> None:
    assert wording_of("at {C:-20}, {emergency}") == (
        "at ", Measured("C", Fraction(-20)), ", ", LocalWord("emergency"),
    )  # fmt: skip
    assert wording_of("") == ()


@pytest.mark.parametrize("template", ["{K:5}", "{C:5", "{C}", "{police}", "C:5}", "{C:warm}"])
def test_braces_that_say_no_figure(template: str) -> None:
    with pytest.raises(ValueError, match=r"unit|brace|Fraction|figure"):
        wording_of(template)


def test_a_sheet_in_fahrenheit_has_no_celsius_left() -> None:
    told = [caution_note(caution(name), US) for name in HAZARDS]
    for note in told:
        texts = (note.words, note.limit, note.if_missed, *(f"{box.label} {box.unit}" for box in note.boxes))
        assert not [text for text in texts if "°C" in text or " C " in text], note
    assert sum("°F" in note.limit for note in told) > 12


def test_american_words_are_american() -> None:
    for name in HAZARDS:
        note = caution_note(caution(name), US)
        said = f"{note.words} {note.limit} {note.if_missed}"
        assert not [
            w for w in ("aluminium", "mould", "olour", "asteuris", "112", "999", "jug", "Cling") if w in said
        ], name


def test_a_limit_is_boxes_for_the_pen_and_no_sentence() -> None:
    note = caution_note(caution("cool-it-fast", level="limit"), METRIC)
    assert (note.words, note.limit, note.if_missed) == ("", "", "")
    assert [plain(box.label) for box in note.boxes] == ["≤ 21 °C at 2 h · over: bin", "≤ 5 °C at 6 h · over: bin"]


def test_the_figures_of_a_step_stand_for_those_of_the_hazard() -> None:
    own = {"cold": Fraction(3), "days": Fraction(1)}
    note = caution_note(caution("plants-under-fat", own=own), METRIC)
    assert plain(note.limit).startswith("1 day at 3 °C is this jar's whole life.")
    assert plain(note.boxes[1].label) == "≤ 3 °C · over: bin"
    half = caution_note(caution("plants-under-fat", own={"cold": Fraction(3)}), METRIC)
    assert plain(half.limit).startswith("4 °C or colder all the time, 4 days at most"), (
        "the general words need no figure"
    )
    fahrenheit = caution_note(caution("plants-under-fat", own=own), US)
    assert plain(fahrenheit.limit).startswith("1 day at 37 °F")


@pytest.mark.parametrize(
    ("lye", "said"), [(Fraction(7, 2), "3.5 %"), (Fraction(1250, 360), "3.47 %"), (Fraction(4), "4 %")]
)
def test_a_bath_is_cautioned_with_its_own_per_cent(lye: Fraction, said: str) -> None:
    note = caution_note(caution("lye-corrosive", own={"lye": lye}), METRIC)
    assert plain(note.limit) == f"{said} lye in this bath; over 6 %: dip nothing"


def test_each_source_is_named_once() -> None:
    notes = [caution_note(caution(name), METRIC) for name in ("scald-burns", "kettle-burns", "honey")]
    assert sources_once(notes) == ("common practice", notes[2].address)


def test_a_limit_is_a_sentence_of_its_own() -> None:
    """It stands in one paragraph with what to do when it goes wrong."""
    (work,) = works(bakery_of("preparation lye bath\n  water 965 g\n  lye 35 g\n  stir 1 min\n"))
    page = html_of(prep_sheet(work, Issue(), House()))
    assert "<b>Lye into water, never water into lye.</b>" in page


def test_a_box_says_its_unit_once() -> None:
    """`as weighed; over 6 %: dip nothing` has named it, `lye` has not."""
    units = [m.words["units." + unit] for m in (METRIC, US) for unit in ("C", "F", "percent")]
    for m in (METRIC, US):
        boxes = [box for name in HAZARDS for box in caution_note(caution(name), m).boxes]
        assert not [box for box in boxes if box.unit and box.unit in box.label]
        assert all(any(unit in f"{box.label} {box.unit}" for unit in units) for box in boxes if "lye" in box.label)
        assert [box.unit for box in boxes if box.label == "lye"] == ["%"]
