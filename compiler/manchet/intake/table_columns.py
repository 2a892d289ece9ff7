"""Which column of a table is which, which rows are none of its materials, and how its figures are written.

A first row of headings says it, in one of five languages; without one the columns are told by their contents. What
was decided is said in `said`, a line each.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from fractions import Fraction

from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple

_UNITS = {
    "g": "g gr gram grams gramme grammes gramm grammo grammi gramo gramos",
    "kg": "kg kilo kilos kilogram kilograms kilogramm kilogramme kilogrammes chilo chili",
    "mg": "mg milligram milligrams milligramm",
    "lb": "lb lbs pound pounds",
    "oz": "oz ounce ounces",
    "l": "l liter litre liters litres litro litri litros",
    "ml": "ml milliliter millilitre milliliters millilitres",
    "gal": "gal gallon gallons",
    "qt": "qt quart quarts",
    "pt": "pt pint pints",
    "cup": "cup cups c.",
    "tbsp": "tbsp tablespoon tablespoons",
    "tsp": "tsp teaspoon teaspoons",
    "whole": "whole piece pieces each pcs stück stk pezzi pièce pièces unidad",
}
UNITS = {spelling: unit for unit, spellings in _UNITS.items() for spelling in spellings.split()}
"""Every spelling of a unit, in small letters, and the unit."""

_HEADINGS = {
    "name": "name, ingredient, ingredients, material, materials, item, what, zutat, zutaten, rohstoff, rohstoffe, artikel, "
    "bezeichnung, ingrédient, ingrédients, matière, ingrediente, ingredienti, ingredientes, materia prima",
    "amount": "amount, quantity, qty, weight, grams, how much, menge, gewicht, quantité, poids, quantità, peso, cantidad",
    "unit": "unit, units, measure, einheit, unité, unità, unidad, misura",
    "stage": "stage, phase, part, for, stufe, teig, étape, pâte, fase, impasto, etapa, masa",
    "percent": "%, percent, per cent, bakers %, baker's %, prozent, pourcentage, percentuale, porcentaje",
}
HEADINGS = {fold(spelling): column for column, spellings in _HEADINGS.items() for spelling in spellings.split(", ")}
_TOTALS = frozenset(
    ["total", "totals", "sum", "subtotal", "summe", "gesamt", "gesamtmenge", "somme", "totale", "somma", "suma"]
)
COLUMNS = ("name", "amount", "unit", "stage")
NUMBER = re.compile(r"[\d.,/½⅓⅔¼¾⅛ ]*\d[\d.,/ ]*|[½⅓⅔¼¾⅛]")
_COMMA = re.compile(r"0,\d+|\d+,(\d{1,2}|\d{4,})|\d{1,3}(\.\d{3})+,\d+")
_POINT = re.compile(r"0\.\d+|\d+\.(\d{1,2}|\d{4,})|\d{1,3}(,\d{3})+\.\d+")
"""A comma, or a point, that can part no thousands; one such tells how the whole table is written."""
_GROUPED = re.compile(r"\d{1,3}([.,]\d{3})+(?:([.,])\d+)?")

UNTOLD = "the first row does not say which column is which: call them name, amount, unit, stage"


class Layout(NamedTuple):
    """`order`: where each column stands. `unit`: the unit that the heading of the amounts gives. `headed`: the first
    row is one of headings, and no material."""

    order: dict[str, int]
    unit: str
    headed: bool
    said: tuple[str, ...]


def layout_of(rows: Sequence[Sequence[str]], known: Callable[[str], bool]) -> Layout:
    """Which column is which. `known` says whether the larder knows a name. Raises ValueError where it cannot be told."""
    first = rows[0]
    named: dict[str, int] = {}
    units: dict[int, str] = {}
    for place, cell in enumerate(first):
        word, unit = _heading(cell)
        if word == "amount" and unit:
            units[place] = unit
            if "amount" in named and named["amount"] not in units:
                named["amount"] = place
        if word:
            named.setdefault(word, place)
    if "name" in named and "amount" in named:
        said = []
        if "percent" in named:
            said.append(
                f"the column {first[named['amount']]} is taken, for it is weighed; {first[named['percent']]} is left out"
            )
        return Layout(named, units.get(named["amount"], ""), True, tuple(said))
    headed = not any(NUMBER.match(cell) for cell in first)
    if not headed and len(first) <= 4 and _is_amount(_at(first, 1)) and not _is_amount(_at(first, 0)):
        return Layout({"name": 0, "amount": 1, "unit": 2, "stage": 3}, "", False, ())
    order = _by_content(rows[1:] if headed else rows, known)
    if headed:
        order |= {word: place for word, place in named.items() if place not in order.values() and word != "percent"}
    told = ", ".join(
        f"{word} from column {place + 1}" + (f" ({first[place]})" if headed and _at(first, place) else "")
        for word, place in sorted(order.items(), key=lambda one: one[1])
    )
    return Layout(order, "", headed, (f"told by their contents: {told}",))


def is_total(name: str, known: bool, amount: Fraction | None, above: Sequence[Fraction]) -> bool:
    """Whether a row is the sum of those above: by its name, or, where that is no ingredient, by its figure."""
    if set(fold(name).rstrip(":").split()) & _TOTALS:
        return True
    return not known and amount is not None and len(above) > 1 and amount == sum(above)


def writes_with_comma(amounts: Sequence[str]) -> bool | None:
    """Whether the table's decimals have a comma (True) or a point (False); None where no figure shows it, or two disagree."""
    comma = any(_COMMA.fullmatch(amount) for amount in amounts)
    point = any(_POINT.fullmatch(amount) for amount in amounts)
    return comma if comma != point else None


def plain_figure(figure: str, comma: bool | None) -> str | None:
    """The figure with a decimal point and no mark at the thousands; None where it can be read in two ways."""
    grouped = _GROUPED.fullmatch(figure)
    if grouped is None or figure.startswith("0"):
        return figure.replace(",", ".")
    if comma is None:
        return None
    thousands, decimal = (".", ",") if comma else (",", ".")
    if re.fullmatch(rf"\d+(\{thousands}\d{{3}})*(\{decimal}\d+)?", figure) is None:
        return None
    return figure.replace(thousands, "").replace(decimal, ".")


def _heading(cell: str) -> tuple[str, str]:
    """Which column a heading names, and the unit it gives: `kg`, `Weight (g)`, `Menge [kg]`."""
    plain = fold(cell)
    if plain in HEADINGS:
        return HEADINGS[plain], "g" if plain == "grams" else ""
    if plain in UNITS and plain != "whole":
        return "amount", UNITS[plain]
    parts = re.fullmatch(r"(.+?)[ ,]*[(\[/]? ?([^\W\d]+|%)[)\]]?", plain)
    if parts is None:
        return "", ""
    word, unit = HEADINGS.get(parts[1].strip(), ""), parts[2]
    if word in ("amount", "percent") and unit == "%":
        return "percent", ""
    return (word, UNITS[unit]) if word == "amount" and unit in UNITS else ("", "")


def _by_content(rows: Sequence[Sequence[str]], known: Callable[[str], bool]) -> dict[str, int]:
    """The columns by what stands in them: figures, units, names of the larder (else the words that differ most)."""
    width = max(map(len, rows), default=0)
    columns = [[cell for row in rows if (cell := _at(row, place))] for place in range(width)]

    def share(place: int, test: Callable[[str], bool]) -> Fraction:
        cells = columns[place]
        return Fraction(sum(map(test, cells)), len(cells)) if cells else Fraction(0)

    half = Fraction(1, 2)
    amounts = [p for p in range(width) if share(p, _is_amount) > half]
    units = [p for p in range(width) if p not in amounts and share(p, lambda cell: fold(cell) in UNITS) > half]
    words = [p for p in range(width) if p not in amounts + units and columns[p]]
    names = [p for p in words if share(p, known) >= half] or [
        p for p in words if len(set(columns[p])) == len(columns[p]) and len(columns[p]) == len(rows)
    ]
    if len(amounts) != 1 or len(units) > 1 or not names:
        raise ValueError(UNTOLD)
    order = {"name": max(names, key=lambda p: share(p, known)), "amount": amounts[0]}
    if units:
        order["unit"] = units[0]
    return order


def _is_amount(cell: str) -> bool:
    """A figure, with its unit perhaps: `500`, `1.250,5`, `500 g`."""
    figure = NUMBER.match(cell)
    return figure is not None and (not (rest := cell[figure.end() :].strip()) or fold(rest) in {*UNITS, "%"})


def _at(row: Sequence[str], place: int) -> str:
    return row[place] if 0 <= place < len(row) else ""
