"""Allergens on paper: what is in it, what nobody knows, what was judged; and never what is not in it."""

import io
import json
import re
from pathlib import Path

import pytest
from pypdf import PdfReader
from works import bakery_of, work_in, works

from manchet.sheets.form import Bakehouse
from manchet.sheets.forms.allergens.card import allergen_card
from manchet.sheets.forms.allergens.view import AllergenCard
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.views import AllergenLine
from manchet.sheets.registry import form_called, html_of
from manchet.workspace.bakery import Bakery
from manchet.workspace.selection import selections

ROOT = Path(__file__).parents[2]
HOUSE = House("A4", "metric", "C", "British", "mm")

BREADS = """\
kitchen Shop
  {kitchen}

larder Shop
  seed mix
    class         seed
  cooking chocolate
    class         other
    ask           milk because "the packet says"

formula Buns
  kind rolls
  {head}
  makes 10 buns at 80 g dough
  bake loss 11%

  overall
    white flour          100%
    water                 60%
    salt                   2%
    fresh yeast            2%
    {more}

  dough
    everything else
    mix slow 8 min to 25 C
    divide
    shape round
    brush with gloss 5 g each
    bake 15 min at 220 C
    cool 1 h

preparation gloss
  eggs                   500 g
  whisk 2 min
  good for 1 d at 4 C
"""


def bakery(head: str = "", more: str = "", kitchen: str = "") -> Bakery:
    text = BREADS.format(head=head, more=more, kitchen=kitchen)
    found = bakery_of("\n".join(line for line in text.split("\n") if line.strip() or not line))
    assert found.formula("Buns") is not None, found.diagnostics
    return found


def line_of(head: str = "", more: str = "", kitchen: str = "", stated: bool = True) -> AllergenLine:
    house = bakery(head, more, kitchen)
    formula = house.formula("Buns")
    assert formula is not None
    return allergen_line(work_in(house, formula), Measures(HOUSE, words_of("British")), stated)


def card_of(house: Bakery) -> AllergenCard:
    works = tuple(work_in(house, formula) for formula in house.formulas)
    card = allergen_card(Bakehouse(house.kitchen, works), Issue(), HOUSE)
    assert card is not None
    return card


def test_a_wash_is_in_it() -> None:
    assert line_of() == AllergenLine(("wheat", "egg"))


def test_what_nobody_knows_is_said_with_its_ingredient() -> None:
    line = line_of(more="cooking chocolate     10%")
    assert line.contains == ("wheat", "egg")
    assert line.unknown == ("milk (cooking chocolate)",)


def test_of_what_nothing_is_known_the_name_alone_is_said() -> None:
    assert line_of(more="seed mix              10%").unknown == ("seed mix",)


@pytest.mark.parametrize(
    ("head", "kitchen", "may"),
    [
        ('may contain hazelnut because "same mixer"', "", ("hazelnut",)),
        ("", 'may contain hazelnut because "same mixer"', ("hazelnut",)),
        ('may contain egg because "same brush"', "", ()),
        ('kept apart from sesame because "own bench"', "", ()),
        ("", "also handles mustard", ()),
    ],
)
def test_contact_is_what_the_operator_states(head: str, kitchen: str, may: tuple[str, ...]) -> None:
    line = line_of(head, kitchen=kitchen)
    assert line.may == may
    assert line.contains == ("wheat", "egg")


def test_what_is_stated_of_the_bakehouse_is_no_matter_at_home() -> None:
    assert line_of('may contain hazelnut because "same mixer"', stated=False).may == ()


def test_the_words_are_those_of_the_market() -> None:
    assert line_of(more="soya lecithin          1%", kitchen="sells in US").contains == ("wheat", "egg", "soy")
    assert line_of(more="rye chops              2%", kitchen="sells in US").contains == ("wheat", "egg")
    assert line_of(more="rye chops              2%", kitchen="sells in Britain").contains == ("wheat", "rye", "egg")


def test_the_card_has_the_columns_that_occur() -> None:
    card = card_of(
        bakery(
            'may contain hazelnut because "same mixer"\n  kept apart from sesame because "own bench"',
            "cooking chocolate     10%",
            "also handles mustard",
        )
    )
    assert card.columns == ("wheat", "egg", "milk", "hazelnut", "sesame")
    (row,) = card.rows
    assert (row.name, row.cells) == ("Buns", ("yes", "yes", "unknown", "may", "apart"))
    said = " ".join(card.reasons)
    for words in ("same mixer", "own bench", "mustard", "cooking chocolate"):
        assert words in said


def test_no_blank_where_nothing_is_known_of_an_ingredient() -> None:
    card = card_of(
        bakery('may contain hazelnut because "same mixer"', "seed mix              10%\n    cooking chocolate 5%")
    )
    (row,) = card.rows
    assert dict(zip(card.columns, row.cells, strict=True)) == {
        "wheat": "yes", "egg": "yes", "milk": "unknown", "hazelnut": "may",
    }  # fmt: skip
    house = bakery('kept apart from sesame because "own bench"', "seed mix              10%")
    assert card_of(house).rows[0].cells == ("yes", "yes")


def test_a_statement_falls_where_the_thing_is_in_it() -> None:
    card = card_of(bakery('kept apart from egg because "no wash here"'))
    assert card.rows[0].cells == ("yes", "yes")
    assert not any("no wash here" in reason for reason in card.reasons)


def test_the_demo_says_on_every_form_what_is_in_it() -> None:
    (selection,) = selections([str(ROOT / "recipes")])
    house = selection.bakery.read(None)
    card = card_of(house)
    rows = {row.name: dict(zip(card.columns, row.cells, strict=True)) for row in card.rows}
    # Only what touches it brings these: seeds rolled in, nuts strewn on, a wash.
    assert rows["Mooring rings"]["sesame"] == "yes"
    assert rows["Copper wreath"]["hazelnut"] == "yes"
    assert rows["Copper wreath"]["egg"] == "yes"
    for row in card.rows:
        formula = next(one for one in house.formulas if row.name.startswith(one.name))
        line = allergen_line(work_in(house, formula), Measures(HOUSE, words_of("British")))
        said = {*line.contains, *(word for also in line.also for word in also.words)}
        assert {word for word, cell in rows[row.name].items() if cell == "yes"} <= said


def test_nothing_on_the_card_says_what_is_not_in_a_food() -> None:
    (selection,) = selections([str(ROOT / "recipes")])
    text = html_of(card_of(selection.bakery.read(None)))
    body = re.sub(r"<style.*?</style>", "", text.partition("<body")[2], flags=re.DOTALL)
    assert "free from" in body  # in one sentence: never say it
    assert len(re.findall("free", body)) == 1
    for words in ("does not contain", "In nothing", "contains no", "safe"):
        assert words not in body
    assert json.dumps(card_of(selection.bakery.read(None))._asdict(), default=str)


def test_a_card_of_many_columns_lies_down_and_breaks_no_word() -> None:
    nuts = ("almonds", "walnuts", "hazelnuts", "pecans", "pistachios", "cashews", "brazil nuts", "macadamia nuts")
    others = ("milk", "eggs", "sesame seeds", "soya flour", "mustard", "celeriac", "peanuts", "lupin flour")
    loaf = "formula Loaf {}\n  makes 10 loaves at 900 g dough\n  dough\n    white flour 4000 g\n    water 2600 g\n    {} 200 g\n"
    loaf += "    mix slow 8 min to 26 C\n    divide\n    bake 35 min at 220 C\n    cool 2 h\n\n"
    made = works(bakery_of("".join(loaf.format(n, what) for n, what in enumerate((*nuts, *others)))))
    card = allergen_card(Bakehouse(made[0].kitchen, made), Issue(), HOUSE._replace(paper="Letter"))
    assert card is not None and card.landscape and len(card.columns) > 14
    pdf = pdf_of(html_of(card), form_called("allergens").layouts)
    assert isinstance(pdf, Pdf) and pdf.faults == ()
    text = " ".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf.content)).pages)
    key = 1  # what YES says is said once
    assert text.split().count("YES") == key + sum(row.cells.count("yes") for row in card.rows)
