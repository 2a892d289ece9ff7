"""A formula from a table: name, amount, unit, and if there is one, the stage.

The table is CSV, or what a spreadsheet puts on the clipboard (parted by tabs). Its columns may stand in any order: see
`table_columns`. Nothing is guessed: a name the larder does not know, an amount that can be read in two ways and a row
that is no material stand in the formula as comments that ask, and each is reported.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Callable, Iterable
from fractions import Fraction

from manchet.diagnostics.suggest import fold
from manchet.intake.read_back import line_of
from manchet.intake.table_columns import COLUMNS, UNITS, is_total, layout_of, plain_figure, writes_with_comma
from manchet.normal.text import normal_text
from manchet.quantities.units import UNITS as UNITS_OF_THE_KITCHEN
from manchet.records import NamedTuple
from manchet.source.text import SourceText
from manchet.syntax.vocabulary import CALLED_BY_KIND

MOST_ROWS = 2_000
_MADE_FIRST = tuple(word for word in CALLED_BY_KIND if word != "dough")
_PLAIN = re.compile(r"\d{1,9}(?:[.,]\d{1,6})?|\d{1,9} \d{1,3}/\d{1,3}|\d{1,3}/\d{1,3}")
_WITH_UNIT = re.compile(r"([\d.,/ ]+?)\s*([^\d\s.,/]+\.?)")


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


class TableImport(NamedTuple):
    """The text of the formula, each thing that must be asked (row number, question), and what was decided: a line each."""

    text: str
    questions: tuple[tuple[int, str], ...]
    said: tuple[str, ...] = ()


class _Table(NamedTuple):
    rows: tuple[Row, ...]
    said: tuple[str, ...]


def import_table(name: str, table: str, known: Callable[[str], Known]) -> TableImport:
    """The formula called `name` by weight, from the text of a table. Raises ValueError for what is no table."""
    rows, said = _table(table, lambda word: not known(word).asks)
    comma = writes_with_comma([_figure_of(row.amount) for row in rows])
    rows, left = _without_totals(rows, comma, known)
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
    text = normal_text(SourceText("", "\n".join([*head, *body])))
    return TableImport(text, tuple(questions), (*said, *left))


def _material(row: Row, known: Callable[[str], Known], comma: bool | None) -> tuple[list[str], list[str]]:
    """The lines for one row, and what must be asked about it. `comma`: see `table_columns.writes_with_comma`."""
    name = _safe(row.name)
    asked: list[str] = []
    amount, unit, question = _amount(row, comma)
    if not name:
        question = question or "there is an amount without a name"
    if question:
        asked.append(question)
    else:
        asked += [asks] if (asks := known(name).asks) else []
        if UNITS_OF_THE_KITCHEN[unit].factor == 0:
            asked.append(
                f"which country's {unit} is the {amount} {unit} of {name}? give the weight, or say in the kitchen "
                "`measures US`, metric or imperial"
            )
    line = "" if question else line_of(name, amount, unit)
    if not question and not line:
        asked = [f"{name} {amount} {unit} cannot stand as a line: by which name is it to go?"]
    lines = [f"    # row {row.number}: {one}" for one in asked]
    as_it_stood = " ".join(map(_safe, (row.name, row.amount, row.unit))).rstrip()
    lines.append(line or f"    # {as_it_stood}")
    return lines, asked


def _figure_of(amount: str) -> str:
    """The figure of an amount that may have its unit behind it."""
    both = _WITH_UNIT.fullmatch(amount)
    return both.group(1).strip() if both else amount


def _without_totals(
    rows: tuple[Row, ...], comma: bool | None, known: Callable[[str], Known]
) -> tuple[tuple[Row, ...], tuple[str, ...]]:
    """The rows that are materials, and a line for each that is the sum of those above."""
    kept: list[Row] = []
    said = []
    grams: list[Fraction] = []
    for row in rows:
        amount = _grams(row, comma)
        if is_total(row.name or row.amount, bool(row.name) and not known(row.name).asks, amount, grams):
            said.append(f"row {row.number}, {row.name or row.amount}, is a total and was left out")
            continue
        kept.append(row)
        if amount is not None:
            grams.append(amount)
    return tuple(kept), tuple(said)


def _grams(row: Row, comma: bool | None) -> Fraction | None:
    """The weight of a row, where it is one that can be read."""
    figure, unit, _ = _amount(row, comma)
    factor = {"g": Fraction(1), "kg": Fraction(1000)}.get(unit)
    return None if factor is None or not figure or "/" in figure else Fraction(figure) * factor


def _amount(row: Row, comma: bool | None) -> tuple[str, str, str]:
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
    plain = plain_figure(figure, comma)
    if plain is None and (parts := re.fullmatch(r"(\d+)[.,](\d{3})", figure)):
        return "", "", f"is {figure} of {row.name} {parts[1]}{parts[2]}, or {parts[1]} and a fraction?"
    if plain is None or not _PLAIN.fullmatch(plain):
        return "", "", f"the amount of {row.name}, {figure!r}, is not a plain figure"
    known = UNITS.get(unit.casefold().strip())
    if known is None:
        return (
            "",
            "",
            f"{figure} {unit} of {row.name}: which unit is that?" if unit else f"{figure} what of {row.name}?",
        )
    return plain, known, ""


def _table(table: str, known: Callable[[str], bool]) -> _Table:
    """The rows of a table, and what was decided about its columns."""
    table = table.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    if "\0" in table:
        raise ValueError("this is not a table: it holds bytes that are not text")
    reader = csv.reader(io.StringIO(table), delimiter=_delimiter(table))
    try:
        cells = [
            (number, [" ".join(cell.split()) for cell in row])
            for number, row in enumerate(reader, start=1)
            if any(cell.strip() for cell in row)
        ]
    except csv.Error:
        raise ValueError(
            f"line {reader.line_num} of the table has a cell that is too long, or a quote that is not closed"
        ) from None
    if not cells:
        raise ValueError("the table is empty")
    if len(cells) > MOST_ROWS:
        raise ValueError(f"the table has {len(cells):,} rows; {MOST_ROWS:,} is the most")
    if all(len(row) < 2 for _, row in cells):
        raise ValueError("the table has only one column; name and amount go in two, separated by a comma, ; or a tab")
    layout = layout_of([row for _, row in cells], known)
    if layout.headed:
        cells = cells[1:]
    if not cells:
        raise ValueError("the table has headings and no rows")

    def cell(row: list[str], column: str) -> str:
        place = layout.order.get(column, -1)
        return row[place] if 0 <= place < len(row) else ""

    rows = (Row(number, *(cell(row, column) for column in COLUMNS)) for number, row in cells)
    if layout.unit:
        rows = (
            row._replace(unit=row.unit or ("" if _WITH_UNIT.fullmatch(row.amount) else layout.unit)) for row in rows
        )
    return _Table(tuple(rows), layout.said)


def _delimiter(table: str) -> str:
    first = table.lstrip("\n").split("\n", 1)[0]
    return "\t" if "\t" in first else ";" if ";" in first else ","


def _stage(written: str) -> str:
    """A stage's heading. The dough's is `dough`; a word of the trade stands as it is; any other is a `stage`."""
    name = _safe(written)
    folded = fold(name)
    if folded in ("", "dough", "final dough", "main dough", "teig", "hauptteig", "impasto", "masa"):
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
