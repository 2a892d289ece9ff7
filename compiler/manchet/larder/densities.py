"""What an amount of an ingredient weighs: by scale, by volume through a density, by count through the weight of one.

1 ml of water is taken as 1 g whatever its temperature. Anything else measured by volume needs its density in the
larder; cups and spoons need a country, and are worth a warning even then: a cup of flour holds 113 to 160 g, a
teaspoon of salt 5.4 to 7 g (household tables compared; common practice).
"""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.larder.figures import show_figure
from manchet.larder.ingredient import Ingredient
from manchet.quantities.units import MASS, MEASURES, UNITS, VOLUME, WHOLE, factor
from manchet.source.text import Line
from manchet.syntax.nodes import Amount

SPOONS = frozenset({"cup", "tbsp", "tsp"})


def weight_of(amount: Amount, ingredient: Ingredient | None, measures: str, line: Line) -> Outcome[Fraction | None]:
    """Grams of a single amount, or None with the report that says why not.

    `ingredient` is None for a stage or preparation, which can only be weighed. `measures` is the kitchen's: "US",
    "metric", "imperial" or "". The amount is one figure of mass, volume or count; `line` is where it stands.
    """
    figure = amount.low
    if figure is None or figure != amount.high or not amount.unit:
        return Outcome(None)
    dimension = UNITS[amount.unit].dimension
    if dimension == MASS:
        return Outcome(figure * UNITS[amount.unit].factor)
    place = line.place(amount.start, amount.end)
    if dimension == WHOLE:
        name = ingredient.name if ingredient else "this"
        help = f"write the weight, or in your larder under {name}: `whole 50 g`"
        one, reports = weight_of_one(ingredient, name, place, help)
        return Outcome(None if one is None else figure * one, reports)
    if dimension == VOLUME:
        return _of_volume(amount, ingredient, measures, line)
    return Outcome(None)


def weight_of_one(ingredient: Ingredient | None, name: str, place: Place, help: str) -> Outcome[Fraction | None]:
    """Grams of one egg, one apple; or the report that nobody knows them, with `help` on what to write instead."""
    if ingredient is not None and ingredient.whole is not None:
        return Outcome(ingredient.whole)
    message = f"the larder does not say what one of {name} weighs"
    return Outcome(None, (report("weight-of-one-unknown", place, message, help),))


def _of_volume(amount: Amount, ingredient: Ingredient | None, measures: str, line: Line) -> Outcome[Fraction | None]:
    millilitres, unknown = millilitres_of(amount, measures, line)
    if millilitres is None:
        return Outcome(None, unknown)
    place = line.place(amount.start, amount.end)
    name = ingredient.name if ingredient else "what is made here"
    sizes = {unit: factor(unit, measures) or Fraction(0) for unit in _units(amount)}
    density = _density(ingredient)
    if density is None and ingredient is not None and ingredient.density_span is not None:
        low, high = (show_figure(sizes[amount.unit] * end) for end in ingredient.density_span)
        message = f"a {amount.unit} of {name} weighs {low} to {high} g: it depends on the grain, and no two makers sell the same"
        help = "weigh one with your own spoon, and write the grams; or `density 0.6 kg/l` of yours in your larder"
        return Outcome(None, (report("density-by-grain", place, message, help),))
    if density is None:
        message = f"the larder does not say what a millilitre of {name} weighs"
        help = f"write the weight, or in your larder under {name}: `density 0.55 kg/l`"
        return Outcome(None, (report("density-unknown", place, message, help),))
    reports: tuple[Diagnostic, ...] = ()
    spoon = next((unit for unit in sizes if unit in SPOONS), "")
    if spoon:
        message = f"a {spoon} of {name} is taken as {show_figure(sizes[spoon] * density)} g; spoons vary by a third"
        help = "weigh it once with your own spoon and write the grams"
        reports = (report("measured-by-spoon", place, message, help),)
    return Outcome(millilitres * density, reports)


def millilitres_of(amount: Amount, measures: str, line: Line) -> Outcome[Fraction | None]:
    """Millilitres of a single volume, or None with the report of the measure that has no size in the kitchen's country."""
    units = _units(amount)
    sizes = {unit: factor(unit, measures) for unit in units}
    unknown = next((unit for unit in units if sizes[unit] is None), "")
    if not unknown:
        parts = ((amount.low or Fraction(0), amount.unit), *amount.smaller)
        return Outcome(sum((number * (sizes[unit] or 0) for number, unit in parts), Fraction(0)))
    differing = {unit for unit in units if not UNITS[unit].factor}
    countries = tuple(f"`measures {country}`" for country, known in MEASURES.items() if known.keys() >= differing)
    written = line.body[amount.start : amount.end]
    message = f"`{written}`: a {unknown} differs from country to country"
    if measures:
        message = f"`{written}`: there is no {measures} {unknown}"
    help = f"write grams or ml, or {list_of_words(countries)} under the kitchen"
    place = line.place(amount.start, amount.end)
    return Outcome(None, (report("measure-of-no-country", place, message, help),))


def _units(amount: Amount) -> tuple[str, ...]:
    return (amount.unit, *(unit for _, unit in amount.smaller))


def _density(ingredient: Ingredient | None) -> Fraction | None:
    if ingredient is None:
        return None
    return Fraction(1) if ingredient.class_ == "water" else ingredient.density
