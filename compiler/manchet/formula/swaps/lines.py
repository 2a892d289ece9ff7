"""Lines that weigh something, as a swap needs to see them: their figure, and what it is of."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction
from typing import NamedTuple

from manchet.diagnostics.suggest import fold
from manchet.larder.book import Larder
from manchet.larder.densities import weight_of
from manchet.larder.ingredient import Ingredient
from manchet.syntax import nodes
from manchet.syntax.nodes import Amount, Entry, Word

PERCENT, GRAMS = "%", "g"
ALL_FLOUR = "all flour"


class Bench(NamedTuple):
    """What a swap is made with: the larder, whose spoons are meant, whose factors between yeasts."""

    larder: Larder
    measures: str
    factors: str

    def key(self, name: str) -> str:
        return self.larder.key(name)


def grams_of(amount: Amount, ingredient: Ingredient | None, entry: Entry, bench: Bench) -> Amount:
    """The amount in per cent or grams; as it was where nobody knows what it weighs (binding reports that)."""
    if amount.unit == PERCENT:
        return amount
    grams = weight_of(amount, ingredient, bench.measures, entry.line).value
    return amount if grams is None else amount._replace(low=grams, high=grams, unit=GRAMS)


def times(amount: Amount, factor: Fraction) -> Amount:
    low = None if amount.low is None else amount.low * factor
    return amount._replace(low=low, high=None if amount.high is None else amount.high * factor)


def line_of(entry: Entry, name: str, figure: Fraction, unit: str, basis: str = "") -> Entry:
    """A new line that weighs something, at the place of another."""
    end = len(entry.line.body)
    return Entry(entry.line, nodes.Material(Word(name, 0, end), Amount(figure, figure, unit, 0, end), basis))


def largest(lines: Iterable[Entry], fits: Callable[[nodes.Material], bool]) -> Entry | None:
    """The line with the most of those that fit."""
    found = [e for e in lines if isinstance(e.node, nodes.Material) and fits(e.node)]
    return max(found, key=figure_of, default=None)


def figure_of(entry: Entry) -> Fraction:
    assert isinstance(entry.node, nodes.Material)
    return entry.node.amount.low or Fraction(0)


def with_figure(entry: Entry, figure: Fraction) -> Entry:
    assert isinstance(entry.node, nodes.Material)
    return entry._replace(node=entry.node._replace(amount=entry.node.amount._replace(low=figure, high=figure)))


def replaced(lines: Iterable[Entry], old: Entry, new: Entry | None) -> list[Entry]:
    """The lines with one of them put in another's place, or (None) left out."""
    return [found for found in (new if line is old else line for line in lines) if found is not None]


def joined(lines: Iterable[Entry], bench: Bench) -> list[Entry]:
    """The lines with those of one ingredient, weighed alike, made into one."""
    found: list[Entry] = []
    there: dict[tuple[object, ...], int] = {}
    for entry in lines:
        node = entry.node
        if isinstance(node, nodes.Material):
            warm = node.at and (node.at.low, node.at.unit)
            alike = (bench.key(node.name.text), node.amount.unit, node.basis, warm, node.booking)
            if alike in there:
                at = there[alike]
                found[at] = with_figure(found[at], figure_of(found[at]) + figure_of(entry))
                continue
            there[alike] = len(found)
        found.append(entry)
    return found


def is_dough(entry: Entry) -> bool:
    return isinstance(entry.node, nodes.StageHead) and fold((entry.node.name or entry.node.word).text) == "dough"
