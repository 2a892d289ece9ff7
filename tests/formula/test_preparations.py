"""A preparation's per cents are of all that is weighed for it, or of the line that the file gives at 100 %."""

from __future__ import annotations

from fractions import Fraction

from every import every
from works import first_work, formula_of

from manchet.batch.weighing import weighings
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.foot import overall_shares

SAUCE = "preparation white sauce\n  milk 500 g\n  butter 30 g\n  maize starch 30 g\n  salt 4 g\n  whisk 2 min\n"
QUARK = "preparation quark filling\n  quark 600 g\n  white flour 40 g\n  sugar 100 g\n  eggs 60 g\n  stir 2 min\n"
PASTE = "preparation cross paste\n  white flour 100%\n  water 95%\n  sunflower oil 10%\n  stir 2 min\n"
CUSTARD = "preparation custard\n  maize starch 8%\n  milk 100%\n  sugar 15%\n  whisk 2 min\n"
LYE = "preparation weak bath\n  water 5000 g\n  lye 180 g\n  hold back lye\n  add lye\n  stir 3 min\n"


@every(
    [
        (SAUCE, {"milk": "89 %", "butter": "5.3 %", "maize starch": "5.3 %", "salt": "0.7 %"}),
        (QUARK, {"quark": "75 %", "white flour": "5 %", "sugar": "13 %", "eggs": "7.5 %"}),
        (PASTE, {"white flour": "100 %", "water": "95 %", "sunflower oil": "10 %"}),
        (CUSTARD, {"maize starch": "8 %", "milk": "100 %", "sugar": "15 %"}),
        (LYE, {"water": "97 %", "lye": "3.5 %"}),
    ],
    at_least=5,
)
def test_per_cents_are_of_what_they_are(text: str, said: dict[str, str]) -> None:
    work, m = first_work(text), Measures(House(), words_of("British"))
    (table,) = weighings(work).value
    rows = Bowl(table, work, m)
    weighed = {row.name: row.percent.replace(NBSP, " ") for row in (*rows.rows(False), *rows.rows(True))}
    assert weighed == said
    assert {line.name: line.percent.replace(NBSP, " ") for line in overall_shares(work.formula, {}, m)} == said


@every([PASTE, CUSTARD], at_least=2)
def test_what_is_in_per_cent_and_asked_for_by_nobody_is_made_to_a_kilogram(text: str) -> None:
    assert first_work(text).batch.dough == 1000
    assert formula_of(text).is_in_percent


def test_what_is_weighed_is_made_as_written() -> None:
    assert first_work(SAUCE).batch.dough == Fraction(564)
    assert not formula_of(SAUCE).is_in_percent
