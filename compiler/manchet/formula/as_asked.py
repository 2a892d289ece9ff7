"""What a line leaves to the baker: what may go in on top as the flour asks, of what is poured; and what may be left out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import instead
from manchet.diagnostics.reports import report
from manchet.formula.draft import Item
from manchet.formula.model import Portion
from manchet.formula.naming import Meaning
from manchet.larder.ingredient import POURED_CLASSES, Ingredient
from manchet.source.text import Line
from manchet.syntax.mistakes.odd_figures import ends_of
from manchet.syntax.nodes import MaterialNode

NOTHING = Fraction(0)
MOSTLY = Fraction(50)
"""Grams of water in 100 g from which on a thing wets a dough: our own rule, between cream cheese and yoghurt."""


def not_poured(node: MaterialNode, meaning: Meaning, line: Line) -> Iterator[Diagnostic]:
    """`salt 18-20 g, as the flour asks`: a flour asks for water, and for what is mostly water."""
    if node.more and (meaning.ingredient is None or not _wets(meaning.ingredient)):
        written = line.body[node.amount.start : node.amount.end]
        place = line.place(node.amount.start, len(line.body))
        message = f"{meaning.name} {written}: the flour asks for water or another liquid, and {meaning.name} is none"
        fixes = tuple(instead(place, end) for end in ends_of(written))
        yield report("not-poured", place, message, "choose one figure", fixes=fixes)


def flour_left_out(node: MaterialNode, meaning: Meaning, line: Line) -> Iterator[Diagnostic]:
    """`rye flour 10%, optional`: without it the per cents of all the rest would be others."""
    counts = meaning.ingredient is not None and meaning.ingredient.counts_as_flour
    if node.optional and (counts if node.flour is None else node.flour):
        place = line.place(node.amount.start, len(line.body))
        message = f"{meaning.name} cannot be optional: it counts as flour, and all per cents are of the flour"
        help = "leave the word out, and write the bread without it as a `variant`"
        amount = line.body[node.amount.start : node.amount.end]
        yield report("flour-optional", place, message, help, fixes=(instead(place, amount),))


def _wets(ingredient: Ingredient) -> bool:
    if ingredient.class_ == "water":
        return True
    water = ingredient.composition.get("water")
    return ingredient.class_ in POURED_CLASSES and (ingredient.class_ == "liquid" if water is None else water >= MOSTLY)


def with_the_rest(item: Item, line: Item, share: Fraction) -> Item:
    """What takes the rest of a line of overall has all that may go in on top of it."""
    if not line.more and not line.optional:
        return item
    return item._replace(more=line.more * line.figure / share if share else NOTHING, optional=line.optional)


def more_of(key: str, portions: Iterable[Portion]) -> Fraction:
    """Grams per gram of all flour that may go in on top of what the portions have of an ingredient."""
    return sum((p.share * p.more for p in portions if p.key == key), NOTHING)


def nowhere_to_go(item: Item) -> Diagnostic:
    name = item.meaning.name
    message = f"overall has {name} as the flour asks, but every stage says how much of it goes in"
    help = f"write `what is left of the {name}` or `everything else` in the stage where more may go in"
    return report("asked-of-no-stage", item.place, message, help)
