"""Lines that weigh something, as a swap needs to see them: their figure, and what it is of."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from fractions import Fraction

from manchet.larder.book import Larder
from manchet.larder.densities import weight_of
from manchet.larder.ingredient import Ingredient
from manchet.larder.yeast_factors import Factors
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Amount, Entry, Word

PERCENT, GRAMS = "%", "g"
ALL_FLOUR = "all flour"
SOAKED = "what is soaked"


class SwapKit(NamedTuple):
    """What a swap is made with: the larder, whose spoons are meant, which factors between yeasts."""

    larder: Larder
    measures: str
    factors: Factors

    def key(self, name: str) -> str:
        return self.larder.key(name)


def grams_of(amount: Amount, ingredient: Ingredient | None, entry: Entry, bench: SwapKit) -> Amount:
    """The amount in per cent or grams; as it was where nobody knows what it weighs (binding reports that)."""
    if amount.unit == PERCENT:
        return amount
    grams = weight_of(amount, ingredient, bench.measures, entry.line).value
    return amount if grams is None else amount._replace(low=grams, high=grams, unit=GRAMS)


def in_grams(entry: Entry, bench: SwapKit) -> Entry:
    """The line with its amount in per cent or grams."""
    assert isinstance(entry.node, nodes.MaterialNode)
    amount = grams_of(entry.node.amount, bench.larder.ingredient(entry.node.name.text), entry, bench)
    return entry._replace(node=entry.node._replace(amount=amount))


def of_all(basis: str, share: Fraction | None) -> Fraction:
    """What 1 % of a base is of all flour; a heading without a share is itself of all flour."""
    return Fraction(1) if basis == ALL_FLOUR or share is None else share


def times(amount: Amount, factor: Fraction) -> Amount:
    low = None if amount.low is None else amount.low * factor
    high = None if amount.high is None else amount.high * factor
    return amount._replace(low=low, high=high, smaller=tuple((n * factor, unit) for n, unit in amount.smaller))


def line_of(entry: Entry, name: str, figure: Fraction, unit: str, basis: str = "") -> Entry:
    """A new line that weighs something, at the place of another."""
    end = len(entry.line.body)
    return Entry(entry.line, nodes.MaterialNode(Word(name, 0, end), Amount(figure, figure, unit, 0, end), basis))


def largest(lines: Iterable[Entry], fits: Callable[[nodes.MaterialNode], bool]) -> Entry | None:
    """The line with the most of those that fit."""
    found = [e for e in lines if isinstance(e.node, nodes.MaterialNode) and fits(e.node)]
    return max(found, key=figure_of, default=None)


def figure_of(entry: Entry) -> Fraction:
    assert isinstance(entry.node, nodes.MaterialNode)
    return entry.node.amount.low or Fraction(0)


def with_figure(entry: Entry, figure: Fraction) -> Entry:
    assert isinstance(entry.node, nodes.MaterialNode)
    return entry._replace(node=entry.node._replace(amount=entry.node.amount._replace(low=figure, high=figure)))


def replace_line(lines: Iterable[Entry], old: Entry, new: Entry | None) -> list[Entry]:
    """The lines with one of them put in another's place, or (None) left out."""
    return [found for found in (new if line is old else line for line in lines) if found is not None]


def join_lines(lines: Iterable[Entry], bench: SwapKit) -> list[Entry]:
    """The lines with those of one ingredient, weighed alike, made into one."""
    found: list[Entry] = []
    there: dict[tuple[object, ...], int] = {}
    for entry in lines:
        if isinstance(entry.node, nodes.HoldBack | nodes.Add):
            entry = entry._replace(node=entry.node._replace(items=_once_each(entry.node.items, bench)))
        alike = _alike(entry, bench)
        if alike is not None and alike in there:
            at = there[alike]
            if isinstance(entry.node, nodes.MaterialNode):
                first, more = in_grams(found[at], bench), in_grams(entry, bench)
                found[at] = with_figure(first, figure_of(first) + figure_of(more))
            continue
        if alike is not None:
            there[alike] = len(found)
        found.append(entry)
    return found


def _alike(entry: Entry, bench: SwapKit) -> tuple[object, ...] | None:
    """What two lines have in common that can be one."""
    node = entry.node
    if isinstance(node, nodes.MaterialNode):
        percent = node.amount.unit == PERCENT
        return (nodes.MaterialNode, bench.key(node.name.text), percent, node.basis, _warmth(node.at), node.booking)
    if isinstance(node, nodes.TakeAll | nodes.TakeLeft):
        return (type(node), bench.key(node.name.text), _warmth(node.at))
    return None


def _warmth(at: Amount | None) -> tuple[Fraction | None, str] | None:
    return at and (at.low, at.unit)


def _once_each(parts: Iterable[nodes.Part], bench: SwapKit) -> tuple[nodes.Part, ...]:
    """What is held back or added, each thing named once: amounts of one unit added up; no amount means all of it."""
    found: dict[str, nodes.Part] = {}
    for part in parts:
        key = bench.key(part.name.text)
        there = found.setdefault(key, part)
        if there is part:
            continue
        if there.amount is None or part.amount is None:
            found[key] = there._replace(amount=None)
        elif (there.amount.unit, there.basis) == (part.amount.unit, part.basis):
            figure = (there.amount.low or Fraction(0)) + (part.amount.low or Fraction(0))
            found[key] = there._replace(
                amount=there.amount._replace(
                    low=figure, high=figure, smaller=there.amount.smaller + part.amount.smaller
                )
            )
    return tuple(found.values())
