"""What a larder, kitchen or formula in a text means to the larder, and every report on the way."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.kitchen.model import PLAIN, Kitchen
from manchet.kitchen.reading import kitchen_of
from manchet.larder.book import Larder, builtin
from manchet.larder.densities import weight_of
from manchet.larder.ingredient import Ingredient, Question
from manchet.larder.reading import ingredients_of
from manchet.larder.stocktake import newest_stock
from manchet.source.text import SourceText
from manchet.syntax.nodes import BlockHead, Entry, MaterialNode, StockHead
from manchet.syntax.parser import parse


def house(text: str) -> tuple[Larder, Kitchen, list[Diagnostic]]:
    """The larder and the last kitchen of a text."""
    file, found = parse(SourceText("house.bake", text))
    reports = list(found)
    entries: list[Ingredient | Question] = []
    kitchen = PLAIN
    for block in file.entries:
        if isinstance(block.node, BlockHead) and block.node.word == "larder":
            read, found = ingredients_of(block)
            entries += read
            reports += found
        elif isinstance(block.node, BlockHead) and block.node.word == "kitchen":
            kitchen, found = kitchen_of(block)
            reports += found
    larder, found = builtin().with_entries(entries)
    return larder, kitchen, [*reports, *found]


def reports_on(text: str) -> list[Diagnostic]:
    """All of them, those on the weights of a formula's materials and on a stocktake included."""
    larder, kitchen, reports = house(text)
    for block in parse(SourceText("house.bake", text)).value.entries:
        if isinstance(block.node, BlockHead) and block.node.word == "formula":
            for entry in _all(block.children):
                if isinstance(entry.node, MaterialNode):
                    ingredient = larder.ingredient(entry.node.name.text)
                    reports += weight_of(entry.node.amount, ingredient, kitchen.measures, entry.line).diagnostics
    stocks = [
        block for block in parse(SourceText("house.bake", text)).value.entries if isinstance(block.node, StockHead)
    ]
    return [*reports, *newest_stock(stocks, larder).diagnostics]


def ingredient_called(larder: Larder, name: str) -> Ingredient:
    found = larder.find(name)
    assert isinstance(found, Ingredient), f"{name}: {found}"
    return found


def _all(entries: tuple[Entry, ...]) -> list[Entry]:
    return [inner for entry in entries for inner in (entry, *_all(entry.children))]
