"""What may go in on top, as the flour asks: no other figure counts it, and it is in no sum."""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Formula, Portion

RULE = "the high end less the low end; the low end is weighed in, and every other figure is with it"
FILE = "the file"


def more_figure(name: str, grams: Fraction, more: Fraction, place: Place | None) -> Figure | None:
    """Grams that stand by for a line of `grams`; None where it is one figure."""
    if not more:
        return None
    where = place.where if place else FILE
    inputs = (
        Given(f"{name}, the low end", grams, "g", where),
        Given(f"{name}, the high end", grams + more, "g", where),
    )
    return Figure(f"{name}, as the flour asks", more, "g", RULE, inputs, FILE)


def at_most_figures(formula: Formula, water_added: Figure) -> dict[str, Figure]:
    """Water added if all of it goes in that may, of a dough whose flour decides."""
    lines = [line for line in formula.overall if line.more and line.ingredient and line.ingredient.class_ == "water"]
    if not lines:
        return {}
    more = sum((line.more for line in lines), Fraction(0)) * 100
    where = lines[0].place.where if lines[0].place else FILE
    given = Given("water that may go in on top", more, "%", where)
    rule = "water added + what may go in on top, as the flour asks"
    figure = Figure("water added at most", water_added.value + more, "%", rule, (water_added, given), FILE)
    return {"water_at_most_percent": figure}


def joined_more(one: Portion, other: Portion) -> Fraction:
    """By what part of itself two portions together may grow."""
    whole = one.share + other.share
    return (one.share * one.more + other.share * other.more) / whole if whole else Fraction(0)
