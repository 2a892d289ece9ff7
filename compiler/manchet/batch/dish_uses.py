"""What a dish uses of each thing, laid down or put on, so that it can be made of what there is."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.lookup import not_in_it
from manchet.formula.model import CountedAmount, Formula
from manchet.formula.nouns import singular
from manchet.larder.densities import weight_of_one
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import mass_text
from manchet.records import NamedTuple


class DishUse(NamedTuple):
    """Grams of something in all that the file makes."""

    name: str
    ingredient: Ingredient | None
    grams: Fraction
    one: Fraction | None
    """Grams that a whole one of it gives, of what is counted; None of what is weighed."""


def dish_of_all(formula: Formula, name: str, amount: Fraction, whole: bool) -> Outcome[Fraction | None]:
    """Grams of all that is laid down, for as many plates as use up so much of one thing: in grams or (`whole`) by count."""
    uses = tuple(_uses(formula))
    mine = [one for one in uses if fold(name) in (fold(one.name), fold(one.ingredient.name if one.ingredient else ""))]
    used = sum((one.grams for one in mine), Fraction(0))
    if not used or formula.own_flour is None:
        return Outcome(None, (not_in_it(formula, name, (one.name for one in uses)),))
    if whole:
        help = f"give the weight of all there is: `{name} 500 g`"
        one, reports = Outcome(mine[0].one)
        if one is None:
            one, reports = weight_of_one(mine[0].ingredient, name, formula.place, help)
        if one is None:
            return Outcome(None, reports)
        amount *= one
    a_plate = used / _plates(formula)
    if amount < a_plate:
        noun = singular(formula.makes[0].noun)
        message = f"{mass_text(amount)} of {name} is not enough for one {noun}, which takes {mass_text(a_plate)}"
        return Outcome(None, (report("makes-no-piece", formula.makes[0].place, message, "ask for more"),))
    return Outcome(formula.own_flour * amount / used)


def _plates(formula: Formula) -> Fraction:
    return formula.makes[0].number or Fraction(1)


def _uses(formula: Formula) -> Iterator[DishUse]:
    counted = {fold(portion.name): portion.counted for stage in formula.stages for portion in stage.portions}
    for line in formula.overall:
        grams = line.share * (formula.own_flour or 0)
        yield DishUse(line.name, line.ingredient, grams, _of_one(counted.get(fold(line.name))))
    plates, own = _plates(formula), {stage.key for stage in formula.stages}
    for step in formula.steps:
        applied = step.applied
        if applied is not None and applied.stage not in own:
            grams = applied.grams * (plates if applied.each else 1)
            yield DishUse(applied.name, applied.ingredient, grams, _of_one(applied.counted))


def _of_one(counted: CountedAmount | None) -> Fraction | None:
    """A loaf gives its slices, without what the slicing loses."""
    return None if counted is None or not counted.known else counted.grams * counted.a_piece
