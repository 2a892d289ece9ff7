"""The oven card on its paper: no word is broken, on A4 and on Letter, in both Englishes, in C and in F."""

from __future__ import annotations

import re
from io import BytesIO
from itertools import product

import pytest
from every import every
from pypdf import PdfReader
from sheets.paper import laid_out
from sheets.test_oven_card import BREADS, card

from manchet.sheets.page.house import House
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.registry import html_of

HOUSES = [House(*of) for of in product(("A4", "Letter"), ("metric",), ("C", "F"), ("British", "American"))]
MANY = (
    *BREADS,
    *((f"Bread {at}", "hearth loaf", 24, f"{290 - 9 * at} C") for at in range(1, 12)),
    ("Internationally renowned loaf", "hearth loaf", 24, "160-180 C"),
)


@pytest.mark.parametrize("house", HOUSES, ids="-".join)
def test_every_word_stands_whole(house: House) -> None:
    (oven,) = card(breads=MANY, house=house).ovens
    said = {
        word
        for turn in oven.turns
        for text in (turn.number, turn.name, turn.load, turn.minutes, turn.look, *turn.notes, *turn.colder)
        for word in text.split()
    }
    made = pdf_of(html_of(card(breads=MANY, house=house)))
    assert isinstance(made, Pdf)
    printed = {word for page in PdfReader(BytesIO(made.content)).pages for word in page.extract_text().split()}
    assert said - printed == set()


@pytest.mark.parametrize("number", (4, 7, 10, 11, 13, 16))
@every(HOUSES, at_least=8)
def test_the_last_page_holds_no_lone_line(house: House, number: int) -> None:
    last = laid_out(html_of(card(breads=MANY[:number], house=house)))[-1].words
    assert "Hotter than what it wants" in last and re.search("Afterwards|Does not fit", last), last


def test_the_picture_says_what_black_and_outline_are() -> None:
    (oven,) = card().ovens
    assert "black: in the oven; outline: the time its heat is there" in oven.svg
