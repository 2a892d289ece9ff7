"""The oven card on its paper: no word is broken, on A4 and on Letter, in both Englishes, in C and in F."""

from __future__ import annotations

from io import BytesIO
from itertools import product

import pytest
from every import every
from pypdf import PdfReader
from sheets.each_form import METRIC, US, sample_of
from sheets.test_oven_card import BREADS, card

from manchet.sheets.forms.oven_card import FORM
from manchet.sheets.page.house import House
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.registry import html_of

HOUSES = [House(*of) for of in product(("A4", "Letter"), ("metric",), ("C", "F"), ("British", "American"))]
MANY = (
    *BREADS,
    *((f"Bread {at}", "hearth loaf", 24, f"{290 - 9 * at} C") for at in range(1, 12)),
    ("Internationally renowned loaf", "hearth loaf", 24, "160-180 C"),
)


FIFTEEN = tuple(
    (f"Bread of the house {at}", "hearth loaf", 24, f"{284 - 13 * at}-{294 - 13 * at} C, steam") for at in range(15)
)


@pytest.mark.parametrize("house", HOUSES, ids="-".join)
def test_every_word_stands_whole(house: House) -> None:
    (oven,) = card(breads=MANY, house=house).ovens
    said = {
        word
        for load in oven.loads
        for text in (load.number, load.name, load.load, load.minutes, load.colder, *load.then)
        for word in text.split()
    }
    made = pdf_of(html_of(card(breads=MANY, house=house)), FORM.layouts)
    assert isinstance(made, Pdf)
    printed = {word for page in PdfReader(BytesIO(made.content)).pages for word in page.extract_text().split()}
    assert {word.rstrip(";.") for word in said} - {word.rstrip(";.") for word in printed} == set()


@every(HOUSES, at_least=8)
def test_fifteen_loads_are_one_side(house: House) -> None:
    view = card(breads=FIFTEEN, takes="", house=house)
    made = pdf_of(html_of(view), FORM.layouts)
    assert isinstance(made, Pdf)
    assert len(view.ovens[0].loads) == 15 and not view.ovens[0].left_out
    assert made.sides == 1


@pytest.mark.parametrize("house", (METRIC, US), ids=["metric", "US"])
def test_the_demo_is_one_side_with_its_decisions_first(house: House) -> None:
    made = pdf_of(html_of(sample_of(FORM, house)), FORM.layouts)
    assert isinstance(made, Pdf) and made.sides == 1
    text = PdfReader(BytesIO(made.content)).pages[0].extract_text()
    assert text.index("Not in this fire: decide now") < text.index("Read the floor") < text.index("Slate bread")


def test_the_curve_is_forty_millimetres_high_and_has_every_load() -> None:
    (oven,) = card(breads=MANY).ovens
    assert oven.curve is not None and 38 <= oven.curve.high <= 42
    numbers = {part.split("<")[0].rsplit(">", 1)[-1] for part in oven.curve.svg.split("<text")[1:]}
    told = {load.number for load in oven.loads}
    assert len(told & numbers) >= len(told) - 3, "a number is left out only where two others stand in its way"
