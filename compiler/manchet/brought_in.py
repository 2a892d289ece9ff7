"""A formula from a table: name, amount, unit, and if there is one, the stage.

The table is CSV, or what a spreadsheet puts on the clipboard (parted by tabs). It may begin with a row of headings;
then the columns may stand in any order. Nothing is guessed: a name the larder does not know, an amount that can be
read in two ways and a row that is no material stand in the formula as comments that ask, and each is reported.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Callable, Iterable
from typing import NamedTuple

from manchet.diagnostics.suggest import fold

MOST_ROWS = 2_000
_UNITS = {
    "g": "g gr gram grams gramme grammes",
    "kg": "kg kilo kilos kilogram kilograms",
    "mg": "mg milligram milligrams",
    "lb": "lb lbs pound pounds",
    "oz": "oz ounce ounces",
    "l": "l liter litre liters litres",
    "ml": "ml milliliter millilitre milliliters millilitres",
    "gal": "gal gallon gallons",
    "qt": "qt quart quarts",
    "pt": "pt pint pints",
    "cup": "cup cups c.",
    "tbsp": "tbsp tablespoon tablespoons",
    "tsp": "tsp teaspoon teaspoons",
    "whole": "whole piece pieces each pcs",
}
_SPELLINGS = {spelling: unit for unit, spellings in _UNITS.items() for spelling in spellings.split()}
_COLUMNS = {
    "name": "name ingredient ingredients material materials item what",
    "amount": "amount quantity qty weight grams how much",
    "unit": "unit units measure",
    "stage": "stage phase part for",
}
_HEADINGS = {spelling: column for column, spellings in _COLUMNS.items() for spelling in spellings.split()}
_MADE_FIRST = ("poolish", "biga", "sponge", "preferment", "old dough", "levain", "sour", "soaker", "scald")
_PLAIN = re.compile(r"\d{1,9}(?:[.,]\d{1,6})?|\d{1,9} \d{1,3}/\d{1,3}|\d{1,3}/\d{1,3}")
_WITH_UNIT = re.compile(r"([\d.,/ ]+?)\s*([^\d\s.,/]+\.?)")
_COMMA_FOR_CERTAIN = re.compile(r"0,\d+|\d+,(\d{1,2}|\d{4,})")
"""A comma that can part no thousands; one such tells how the whole table is written."""
_THOUSANDS = re.compile(r"\d{1,3}[.,]\d{3}")


class Row(NamedTuple):
    """One row of the table as it stands, and its number (from 1)."""

    number: int
    name: str
    amount: str
    unit: str
    stage: str


class Known(NamedTuple):
    """What the larder says of a name. `asks` is "" if it is known, else the question to put to the baker."""

    asks: str


class BroughtIn(NamedTuple):
    """The text of the formula, and each thing that must be asked: (row number, question)."""

    text: str
    questions: tuple[tuple[int, str], ...]


def brought_in(name: str, table: str, known: Callable[[str], Known]) -> BroughtIn:
    """The formula called `name` by weight, from the text of a table. Raises ValueError for what is no table."""
    rows = _rows(table)
    comma = any(_COMMA_FOR_CERTAIN.fullmatch(row.amount) for row in rows)
    questions: list[tuple[int, str]] = []
    stages: dict[str, list[str]] = {}
    for row in rows:
        lines, asked = _material(row, known, comma)
        questions += [(row.number, question) for question in asked]
        stages.setdefault(_stage(row.stage), []).extend(lines)
    dough = stages.pop("dough", [])
    body: list[str] = []
    for heading, lines in stages.items():
        body += ["", f"  {heading}", *lines]
    body += ["", "  dough", *[f"    {_name_of(heading)}" for heading in stages], *dough]
    head = [
        f"formula {name}",
        "  # By weight, as the table has it. Say what it is, how many it makes and what is done:",
        "  #   kind hearth loaf",
        "  #   makes 10 loaves at 900 g dough",
        "  # and at the end of each stage its steps, such as",
        '  #   mix slow 4 min to 25 C until "smooth"',
    ]
    return BroughtIn("\n".join([*head, *body]) + "\n", tuple(questions))


def _material(row: Row, known: Callable[[str], Known], comma: bool) -> tuple[list[str], list[str]]:
    """The lines for one row, and what must be asked about it. `comma`: the table writes decimals with a comma."""
    name = _safe(row.name)
    asked: list[str] = []
    amount, unit, question = _amount(row, comma)
    if not name:
        question = question or "there is an amount without a name"
    if question:
        asked.append(question)
    elif asks := known(name).asks:
        asked.append(asks)
    lines = [f"    # row {row.number}: {one}" for one in asked]
    as_it_stood = " ".join(map(_safe, (row.name, row.amount, row.unit))).rstrip()
    lines.append(f"    # {as_it_stood}" if question else f"    {name:<22}{amount} {unit}")
    return lines, asked


def _amount(row: Row, comma: bool) -> tuple[str, str, str]:
    """Figure and unit as the language writes them, and a question if they cannot be told."""
    figure, unit = row.amount, row.unit
    if not unit and (both := _WITH_UNIT.fullmatch(figure)):
        figure, unit = both.group(1).strip(), both.group(2)
    elif not unit and figure.endswith("%"):
        figure, unit = figure[:-1].strip(), "%"
    if not figure:
        return "", "", f"how much {row.name}? there is no amount"
    if unit == "%":
        return "", "", f"{row.name} is in per cent, and this formula goes by weight: how much is weighed?"
    if not _PLAIN.fullmatch(figure):
        return "", "", f"the amount of {row.name}, {figure!r}, is no plain figure"
    if _THOUSANDS.fullmatch(figure) and not figure.startswith("0") and not (comma and "," in figure):
        whole, part = re.split("[.,]", figure)
        return "", "", f"is {figure} of {row.name} {whole}{part}, or {whole} and a fraction?"
    known = _SPELLINGS.get(unit.casefold().strip())
    if known is None:
        return (
            "",
            "",
            f"{figure} {unit} of {row.name}: which unit is that?" if unit else f"{figure} what of {row.name}?",
        )
    return figure.replace(",", "."), known, ""


def _rows(table: str) -> tuple[Row, ...]:
    table = table.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    if "\0" in table:
        raise ValueError("this is no table: it holds bytes that are not text")
    cells = [
        (number, [" ".join(cell.split()) for cell in row])
        for number, row in enumerate(csv.reader(io.StringIO(table), delimiter=_delimiter(table)), start=1)
        if any(cell.strip() for cell in row)
    ]
    if not cells:
        raise ValueError("the table is empty")
    if len(cells) > MOST_ROWS:
        raise ValueError(f"the table has {len(cells):,} rows; {MOST_ROWS:,} is the most")
    order = _order(cells[0][1])
    if order:
        cells = cells[1:]
    order = order or {"name": 0, "amount": 1, "unit": 2, "stage": 3}
    if not cells:
        raise ValueError("the table has headings and no rows")
    if all(len(row) < 2 for _, row in cells):
        raise ValueError("the table has only one column; name and amount stand in two, parted by a comma, ; or a tab")

    def cell(row: list[str], column: str) -> str:
        place = order.get(column, -1)
        return row[place] if 0 <= place < len(row) else ""

    columns = ("name", "amount", "unit", "stage")
    return tuple(Row(number, *(cell(row, column) for column in columns)) for number, row in cells)


def _delimiter(table: str) -> str:
    first = table.lstrip("\n").split("\n", 1)[0]
    return "\t" if "\t" in first else ";" if ";" in first else ","


def _order(first: list[str]) -> dict[str, int]:
    """Where each column stands, if the first row is one of headings; else empty."""
    named = {_HEADINGS[fold(cell)]: place for place, cell in enumerate(first) if fold(cell) in _HEADINGS}
    return named if "name" in named and "amount" in named else {}


def _stage(written: str) -> str:
    """A stage's heading. The dough's is `dough`; a word of the trade stands as it is; any other is a `stage`."""
    name = _safe(written)
    folded = fold(name)
    if folded in ("", "dough", "final dough", "main dough"):
        return "dough"
    if any(folded == word or folded.startswith(word + " ") for word in _MADE_FIRST):
        return folded if folded in _MADE_FIRST else name
    return f"stage {name}"


def _name_of(heading: str) -> str:
    """How a stage is named where it is used."""
    for word in (*_MADE_FIRST, "stage"):
        if heading.casefold().startswith(word + " "):
            return heading[len(word) + 1 :]
    return heading


def _safe(text: str) -> str:
    """A cell as it may stand in a formula: one line of plain characters, no comment sign, no quote."""
    return " ".join("".join(c for c in text if c.isprintable() and c not in '#"').split())


def rows_asking(questions: Iterable[tuple[int, str]]) -> str:
    """The questions, one a line, for the terminal."""
    return "\n".join(f"row {number}: {question}" for number, question in questions)
