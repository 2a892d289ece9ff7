"""What is known of a food that a caution asks for. What nobody says is the worse: raw, wet, not pasteurised, not sour."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.legs import NOT_SAID, ROOM
from manchet.cautions.limits import figure
from manchet.cautions.vessel import Foodstuff, FoodVessel
from manchet.formula.model import Formula, Range
from manchet.larder.acid_and_water import keeps_without_cold
from manchet.larder.book import DRY_BELOW
from manchet.larder.foods import (
    cut_leaf,
    grows_wet,
    is_heat_treated,
    is_meat_or_fish as meat_or_fish,
    is_pasteurised,
    raw_fish,
    raw_meat_or_fish,
)
from manchet.larder.ingredient import FLOUR_CLASSES
from manchet.records import NamedTuple

WETS = frozenset({"water", "liquid", "dairy", "egg"})
"""Classes in which what is dried soaks."""
COOKED_PERISH = frozenset({"egg", "dairy", "vegetable", "grain", *FLOUR_CLASSES})
"""What grows germs again once it was cooked and is warm; meat and fish besides."""
_WATER = {
    "water": 100,
    "liquid": 90,
    "dairy": 80,
    "egg": 75,
    "vegetable": 85,
    "fruit": 80,
    "meat": 65,
    "fish": 70,
    "culture": 50,
}
"""Grams in 100 g that are reckoned with where the larder does not know. Our rule."""


class Keeping(NamedTuple):
    """One way of keeping: seconds, and as warm as it may be, a room's where nobody says."""

    seconds: Fraction
    celsius: Fraction
    is_said: bool


def is_kept_by_itself(formula: Formula) -> bool:
    """A preparation: a bread is sold, and a dish is built to be eaten."""
    return formula.preparation and not formula.dish


def markets_of(work: Work) -> tuple[str, ...]:
    """Where the house sells, as it says; empty where it does not."""
    return work.kitchen.selling.markets


def ways_kept(formula: Formula) -> tuple[Keeping, ...]:
    """The ways in which a preparation is kept, as its file says."""
    return tuple(
        Keeping(one.seconds, _warmest(one.celsius or NOT_SAID), one.celsius is not None) for one in formula.kept
    )


def _warmest(at: Range) -> Fraction:
    return at.high if at.high is not None else at.low if at.low is not None else ROOM


def is_raw_egg(food: Foodstuff) -> bool:
    """Egg that nobody heated before it came from the larder."""
    return food.ingredient.class_ == "egg" and not says_pasteurised(food)


def says_pasteurised(food: Foodstuff) -> bool:
    return "pasteurised" in food.ingredient.facts or is_pasteurised(food.name) or is_pasteurised(food.ingredient.name)


def is_raw_meat_or_fish(food: Foodstuff) -> bool:
    return raw_meat_or_fish(food.ingredient, food.name)


def is_raw_fish(food: Foodstuff) -> bool:
    return raw_fish(food.ingredient, food.name)


def is_raw_flour(food: Foodstuff) -> bool:
    return food.ingredient.class_.endswith("flour") and not is_heat_treated(food.ingredient, food.name)


def is_dairy(food: Foodstuff) -> bool:
    """Milk, cream, cheese: not what is dry as a powder."""
    water = food.ingredient.composition.get("water")
    return food.ingredient.class_ == "dairy" and (water is None or water >= DRY_BELOW)


def is_meat_or_fish(food: Foodstuff) -> bool:
    return meat_or_fish(food.ingredient, food.name)


def is_wet_plant(food: Foodstuff, soaked: bool) -> bool:
    return grows_wet(food.ingredient, food.name, soaked)


def is_cut_leaf(food: Foodstuff) -> bool:
    """Cut tomato, cut leaves, sprouts: raw plants that have to stay cold."""
    return cut_leaf(food.ingredient, food.name)


def water_in(food: Foodstuff) -> Fraction:
    """Grams per gram; reckoned by its class where the larder does not know."""
    ingredient = food.ingredient
    water = ingredient.composition.get("water")
    class_ = "meat" if is_meat_or_fish(food) else ingredient.class_
    return (Fraction(_WATER.get(class_, 12)) if water is None else water) / 100


def is_wet(vessel: FoodVessel) -> bool:
    """Whether a quarter of it is water as it is weighed, and its sugar does not bind that."""
    water = sum((food.share * water_in(food) for food in vessel.foods), Fraction(0))
    return water >= figure("wet-from") and not kept_by_sugar(vessel, water)


def kept_by_sugar(vessel: FoodVessel, water: Fraction) -> bool:
    """As much sugar as keeps a jam or a caramel: the limit is that of the checks."""
    from manchet.figures.limits.lookup import limit

    sugar, least = vessel.share("sweetener"), limit("kept-by-sugar")
    return least is not None and sugar > 0 and sugar / (sugar + water) > least


def perishes_cooked(food: Foodstuff) -> bool:
    """Egg, dairy, vegetables, starch, grain, meat, fish."""
    return food.ingredient.class_ in COOKED_PERISH or is_meat_or_fish(food)


def sour_in_the_pieces(vessel: FoodVessel, plants: Iterable[Foodstuff]) -> bool:
    """Whether the pieces were measured, and are so sour: a step that says a pH, or what the larder says of each of them."""
    most = figure("sour-in-the-pieces")
    measured = [r.value.high for leg in vessel.legs for r in leg.step.reaches if r.what == "pH"]
    of_larder = [food.ingredient.ph for food in plants]
    return any(ph is not None and ph <= most for ph in measured) or all(
        ph is not None and ph <= most for ph in of_larder
    )


def too_dry(food: Foodstuff) -> bool:
    """Too dry for any germ, as the larder says of it."""
    activity = food.ingredient.water_activity
    return activity is not None and activity <= figure("too-dry-for-germs")


def needs_no_cold(food: Foodstuff, heated_and_packed: bool = False) -> bool:
    """Too sour or too dry for the germs that cold is against, as the larder says of it."""
    return keeps_without_cold(food.ingredient.ph, food.ingredient.water_activity, heated_and_packed)
