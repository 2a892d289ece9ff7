"""What was counted in the store on a day, read from a `stock counted` block."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import exchange_of, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.larder.book import Larder
from manchet.larder.buying import grams_of
from manchet.larder.ingredient import Ingredient, Question
from manchet.larder.names import key
from manchet.quantities.dates import is_day
from manchet.records import NamedTuple
from manchet.syntax.nodes import Amount, Entry, MaterialNode, StockHead, StockLine, Unread, Word


class Stock(NamedTuple):
    """`date` as `2026-11-28`. `counted` are grams by `names.key` of the ingredient; None of what is named and was not counted."""

    date: str
    counted: Mapping[str, Fraction | None]
    place: Place


def newest_stock(blocks: Iterable[Entry], larder: Larder) -> Outcome[Stock | None]:
    """The stocktake that counts: the newest of them, the later in the files of two from one day. None where there is none."""
    stocks: list[Stock] = []
    reports: list[Diagnostic] = []
    for block in blocks:
        stock = _stock(block, larder)
        reports += stock.diagnostics
        if stock.value is not None:
            stocks.append(stock.value)
    newest = max((stock.date for stock in stocks), default="")
    return Outcome(next((stock for stock in reversed(stocks) if stock.date == newest), None), tuple(reports))


def _stock(block: Entry, larder: Larder) -> Outcome[Stock | None]:
    head = block.node
    assert isinstance(head, StockHead)
    reports: list[Diagnostic] = []
    counted: dict[str, Fraction | None] = {}
    first: dict[str, Place] = {}
    for entry in block.children:
        node, line = entry.node, entry.line
        if isinstance(node, Unread) or not isinstance(node, MaterialNode | StockLine):
            continue
        ingredient = _named(node.name, entry, larder)
        reports += ingredient.diagnostics
        if ingredient.value is None:
            continue
        name = key(ingredient.value.name)
        there = first.setdefault(name, line.place())
        if there != line.place():
            message, help = f"{ingredient.value.name} is counted twice", "write what is there in all on one line"
            fixes = (without_line(line.place(), "leave out this line"),)
            reports.append(
                report("stock-line-twice", line.place(), message, help, (there, "the first is here"), fixes=fixes)
            )
            continue
        amount = node.amount if isinstance(node, MaterialNode) else node.packs
        grams = Outcome[Fraction | None](None) if amount is None else _grams(ingredient.value, amount, entry)
        reports += grams.diagnostics
        counted[name] = grams.value
    place = block.line.place()
    if not is_day(head.date.text):
        there = block.line.place(head.date.start, head.date.end)
        help = "write the day of the count as in `stock counted 2026-11-28`"
        return Outcome(None, (*reports, report("stock-of-no-day", there, f"there is no day {head.date.text}", help)))
    return Outcome(Stock(head.date.text, counted, place), tuple(reports))


def _named(word: Word, entry: Entry, larder: Larder) -> Outcome[Ingredient | None]:
    found = larder.find(word.text)
    if isinstance(found, Ingredient):
        return Outcome(found)
    place = entry.line.place(word.start, word.end)
    if isinstance(found, Question):
        near: tuple[str, ...] = found.choices
        message = f"`{word.text}` can mean more than one thing"
        help = f"write {list_of_words(tuple(f'`{name}`' for name in near))}"
    else:
        near = tuple(one for one in larder.near(word.text) if isinstance(larder.find(one), Ingredient))
        message = f"`{word.text}` is not in the larder"
        meant = f"did you mean {list_of_words(tuple(f'`{name}`' for name in near))}? " if near else ""
        help = f"{meant}what is counted is called as in the larder"
    fixes = exchange_of(place, word.text, *near)
    return Outcome(None, (report("stock-of-unknown", place, message, help, fixes=fixes),))


def _grams(entry: Ingredient, amount: Amount, line: Entry) -> Outcome[Fraction | None]:
    """Grams of what was counted; packs are those it is bought in."""
    if amount.low == 0 and amount.high == 0:
        return Outcome(Fraction(0))
    if amount.unit:
        grams = grams_of(entry, amount)
    else:
        pack = entry.buying.pack or (entry.buying.price.grams if entry.buying.price else None)
        grams = amount.low * pack if pack is not None and amount.low == amount.high and amount.low else None
    if grams is not None:
        return Outcome(grams)
    written = line.line.body[amount.start :].strip()
    place = line.line.place(amount.start, amount.end)
    message = f"nobody knows what {written} of {entry.name} weighs"
    help = f"write it in kg, or add a line `pack 5 kg` to {entry.name} in the larder"
    return Outcome(None, (report("stock-not-weighed", place, message, help),))
