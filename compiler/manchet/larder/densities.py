"""What an amount of an ingredient weighs: by scale, by volume through a density, by count through the weight of one.

1 ml of water is taken as 1 g whatever its temperature. Anything else measured by volume needs its density in the
larder; cups and spoons need a country, and are worth a warning even then: a cup of flour holds 113 to 160 g, a
teaspoon of salt 5.4 to 7 g (household tables compared; common practice).
"""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import error, listed, warning
from manchet.larder.figures import shown
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
        if ingredient is None or ingredient.whole is None:
            name = ingredient.name if ingredient else "this"
            return Outcome(
                None,
                (
                    error(
                        "weight-of-one-unknown", place, f"the larder does not say what one of {name} weighs",
                        f"write the weight, or in your larder under {name}: `whole 50 g`",
                    ),
                ),
            )  # fmt: skip
        return Outcome(figure * ingredient.whole)
    if dimension == VOLUME:
        return _of_volume(figure, amount, ingredient, measures, line)
    return Outcome(None)


def _of_volume(
    figure: Fraction, amount: Amount, ingredient: Ingredient | None, measures: str, line: Line
) -> Outcome[Fraction | None]:
    place = line.place(amount.start, amount.end)
    name = ingredient.name if ingredient else "what is made here"
    reports: tuple[Diagnostic, ...] = ()
    millilitres = factor(amount.unit, measures)
    if millilitres is None:
        lines = tuple(f"`measures {country}`" for country, units in MEASURES.items() if amount.unit in units)
        written = line.body[amount.start : amount.end]
        message = f"`{written}`: a {amount.unit} differs from country to country"
        if measures:
            message = f"`{written}`: there is no {measures} {amount.unit}"
        return Outcome(
            None,
            (
                error(
                    "measure-of-no-country", place, message,
                    f"write grams or ml, or {listed(lines)} under the kitchen",
                ),
            ),
        )  # fmt: skip
    density = _density(ingredient)
    if density is None:
        return Outcome(
            None,
            (
                error(
                    "density-unknown", place, f"the larder does not say what a millilitre of {name} weighs",
                    f"write the weight, or in your larder under {name}: `density 0.55 kg/l`",
                ),
            ),
        )  # fmt: skip
    if amount.unit in SPOONS:
        reports = (
            warning(
                "measured-by-spoon", place,
                f"a {amount.unit} of {name} is taken as {shown(millilitres * density)} g; spoons vary by a third",
                "weigh it once with your own spoon and write the grams",
            ),
        )  # fmt: skip
    return Outcome(figure * millilitres * density, reports)


def _density(ingredient: Ingredient | None) -> Fraction | None:
    if ingredient is None:
        return None
    return Fraction(1) if ingredient.class_ == "water" else ingredient.density
