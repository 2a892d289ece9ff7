"""What a formula comes to, in shares of all flour: water in both senses, salt, yeast, sugar, fat, prefermented flour."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from manchet.formula.model import Booking, Formula, Portion, Stage
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient, Poured
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import HOLDS_WATER, PREFERMENTS

NOTHING = Fraction(0)
YEASTS = frozenset({"yeast", "sweet-dough yeast"})


class Totals(NamedTuple):
    """Every figure is grams per gram of all flour, exact (1 is 100 %)."""

    water_added: Fraction
    """The ingredient water alone."""
    water_in_all: Fraction
    """Everything poured, as it stands in the bowl: water, and what is in dairy, eggs, fat, syrup, yeast, cultures. Not the
    moisture of flour, dry goods, whole fruit or vegetables; nor what has boiled off and was not topped up. Of all flour,
    that in cultures counted apart with it, whose water is in it too."""
    water_weighed: Fraction
    """The same as it is weighed in: with what boils off later."""
    boiled_off: Fraction
    flour_apart: Fraction
    """Flour in cultures that are a line of their own, beside the 100 %."""
    salt: Fraction
    """Salt from every ingredient."""
    sugar: Fraction
    """Sugar in the water phase: of sweeteners and what is made of them."""
    fat: Fraction
    prefermented: Fraction
    """Flour in preferments, and in the cultures that are counted."""
    rye: Fraction
    bound_water: Fraction
    """Water that soakers and scalds hold."""
    yeasts: tuple[tuple[Ingredient, Fraction], ...]
    cultures: tuple[tuple[Ingredient, Fraction], ...]
    """Every culture weighed, returned ones too."""
    by_class: Mapping[str, Fraction]
    flour_classes: Mapping[str, Fraction]

    @property
    def wet(self) -> Fraction:
        """Water in all and fat: how soft the dough is to a mixer."""
        return self.water_in_all + self.fat


Holding = Callable[[Ingredient], Poured]
"""What a gram of an ingredient holds."""


def totals_of(formula: Formula, larder: Larder) -> Totals:
    """Add up the overall formula by what the larder says of each ingredient.

    A preparation used as an ingredient has no composition here and adds to none of the figures but its weight.
    """
    by_class: dict[str, Fraction] = {}
    flours: dict[str, Fraction] = {}
    yeasts: dict[str, tuple[Ingredient, Fraction]] = {}
    water = poured_water = apart = salt = sugar = fat = NOTHING
    for line in formula.overall:
        ingredient = line.ingredient
        if ingredient is None:
            continue
        share, class_ = line.share, ingredient.class_
        by_class[class_] = by_class.get(class_, NOTHING) + share
        if line.is_flour:
            flours[class_] = flours.get(class_, NOTHING) + share
        if class_ in YEASTS:
            before = yeasts.get(ingredient.name, (ingredient, NOTHING))[1]
            yeasts[ingredient.name] = (ingredient, before + share)
        if class_ == "water":
            water += share
        poured = larder.poured(ingredient)
        # Most ingredients have nothing of most of these, and a sum of thousands of formulas takes its time.
        if poured.water:
            poured_water += share * poured.water
        if class_ == "culture" and poured.flour and not line.is_flour:
            apart += share * poured.flour
        if poured.salt:
            salt += share * poured.salt
        if poured.sugar:
            sugar += share * poured.sugar
        if poured.fat:
            fat += share * poured.fat
    all_flour = 1 + apart
    boiled_off = sum((stage.boiled_off_share * stage.reaching for stage in formula.stages), NOTHING)
    return Totals(
        water_added=water,
        water_in_all=(poured_water - boiled_off) / all_flour,
        water_weighed=poured_water / all_flour,
        boiled_off=boiled_off,
        flour_apart=apart,
        salt=salt,
        sugar=sugar,
        fat=fat,
        prefermented=_prefermented(formula, larder.poured),
        rye=flours.get("rye flour", NOTHING),
        bound_water=_bound_water(formula, larder.poured) / all_flour,
        yeasts=tuple(yeasts.values()),
        cultures=_cultures(formula),
        by_class=by_class,
        flour_classes=flours,
    )


def _prefermented(formula: Formula, poured: Holding) -> Fraction:
    """Flour that has fermented before the dough is mixed, as a share of all flour.

    Flour weighed into poolish, biga, sponge, old dough, levain and sour, and the flour inside counted cultures
    wherever they are weighed. (The convention of the Bread Bakers Guild of America: prefermented flour / total flour.)
    """
    found = NOTHING
    for stage in formula.stages:
        for portion in stage.portions:
            if portion.booking is Booking.COUNTED and portion.ingredient is not None:
                found += portion.share * stage.reaching * poured(portion.ingredient).flour
            elif portion.is_flour and not portion.stage and stage.word in PREFERMENTS:
                found += portion.share * stage.reaching
    return found


def stage_prefermented(stage: Stage, larder: Larder) -> Fraction:
    """Flour in one stage, its own and its counted culture's, as a share of all flour."""
    return sum((_flour_in(p, larder) for p in stage.portions), NOTHING)


def _flour_in(portion: Portion, larder: Larder) -> Fraction:
    if portion.booking is Booking.COUNTED and portion.ingredient is not None:
        return portion.share * larder.poured(portion.ingredient).flour
    return portion.share if portion.is_flour and not portion.stage else NOTHING


def _bound_water(formula: Formula, poured: Holding) -> Fraction:
    found = NOTHING
    for stage in formula.stages:
        if stage.word in HOLDS_WATER:
            found -= stage.boiled_off_share
            for portion in stage.portions:
                if portion.ingredient is not None:
                    found += portion.share * poured(portion.ingredient).water
    return found


def _cultures(formula: Formula) -> tuple[tuple[Ingredient, Fraction], ...]:
    found: dict[str, tuple[Ingredient, Fraction]] = {}
    for stage in formula.stages:
        for portion in stage.portions:
            ingredient = portion.ingredient
            if ingredient is not None and ingredient.class_ == "culture":
                before = found.get(ingredient.name, (ingredient, NOTHING))[1]
                found[ingredient.name] = (ingredient, before + portion.share)
    return tuple(found.values())
