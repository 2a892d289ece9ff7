"""How warm each thing is when it goes into the bowl, and what it takes to warm it."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import NamedTuple

from manchet.figures.heat import PASTE, specific_heat
from manchet.formula.model import Formula, Portion, Stage
from manchet.larder.book import DRY_BELOW, Larder
from manchet.larder.ingredient import Ingredient
from manchet.larder.kitchen import Kitchen

ROOM = Fraction(20)
"""Celsius, of whatever the file gives no temperature and the kitchen none either."""

FROM_THE_FRIDGE = frozenset({"dairy", "egg", "yeast", "sweet-dough yeast"})
"""Classes that come from the kitchen's fridge when they are moist (milk, eggs, fresh yeast) and nothing is said; butter
does too. Common practice."""

STANDS_OUT = 2 * 3600
"""Seconds after which a stage that stands nowhere in particular has the room's temperature. Our rule."""

COOLS_TO = Fraction(40)
"""Celsius a hot stage has at most after an hour's rest. Our rule, for what the file does not say."""


class Around(NamedTuple):
    """The temperatures things have if nothing else is said, Celsius."""

    air: Fraction
    flour: Fraction
    tap: Fraction
    fridge: Fraction


class GoingIn(NamedTuple):
    """One thing that goes in: Celsius, kJ/kg K, and why it is so warm."""

    portion: Portion
    celsius: Fraction
    specific: Fraction
    why: str

    @property
    def capacity(self) -> Fraction:
        """kJ for 1 C, for each kg of all flour."""
        return self.portion.share * self.specific

    @property
    def heat(self) -> Fraction:
        """kJ above 0 C, for each kg of all flour."""
        return self.capacity * self.celsius


def around(kitchen: Kitchen) -> Around:
    """The kitchen's own figures; what it does not give is as warm as its air, or 20 C."""
    air = kitchen.air if kitchen.air is not None else ROOM
    fridges = (cold.keeps for cold in kitchen.colds if cold.word == "fridge" and cold.keeps is not None)
    return Around(
        air=air,
        flour=kitchen.flour if kitchen.flour is not None else air,
        tap=kitchen.tap if kitchen.tap is not None else air,
        fridge=next(fridges, air),
    )


def going_in(portions: Iterable[Portion], formula: Formula, place: Around, larder: Larder) -> tuple[GoingIn, ...]:
    """Each portion as it is weighed."""
    found = []
    for portion in portions:
        inner = _inner(portion, formula)
        if inner is not None:
            specific = _stage_heat(inner, formula, place, larder)
        else:
            specific = PASTE if portion.ingredient is None else specific_heat(portion.ingredient, larder)
        celsius, why = _celsius(portion, inner, formula, place, larder)
        found.append(GoingIn(portion, celsius, specific, why))
    return tuple(found)


def met(things: Iterable[GoingIn]) -> Fraction | None:
    """Celsius at which things meet: none of them gains or loses but to another. None if there is nothing."""
    things = tuple(things)
    capacity = sum((thing.capacity for thing in things), Fraction(0))
    return sum((thing.heat for thing in things), Fraction(0)) / capacity if capacity else None


def last_temperature(stage: Stage, formula: Formula, place: Around, larder: Larder) -> Fraction | None:
    """How warm a stage is when it is used: the last figure its steps reach or stand in.

    None: it has stood long enough to be as warm as the room, or nothing is said.
    """
    warmth: Fraction | None = None
    if any(p.celsius is not None for p in stage.portions):
        warmth = met(going_in((p for p in stage.portions if not p.held), formula, place, larder))
    for step in stage.steps:
        reached = next((r.value.likely for r in step.reaches if r.what in ("temperature", "core")), None)
        if reached is not None:
            warmth = reached
        elif step.ramp is not None:
            warmth = step.ramp[1].likely
        elif step.heats and step.verb != "bake":
            warmth = step.heats[0].celsius.likely
        elif step.verb in ("boil", "simmer"):
            warmth = Fraction(100)
        elif step.verb in ("rest", "cool", "chill", "soak", "ripen") and step.time is not None:
            if step.time.likely >= STANDS_OUT:
                warmth = None
            elif warmth is not None and step.time.likely >= STANDS_OUT / 2:
                warmth = min(warmth, COOLS_TO)
    return warmth


def _inner(portion: Portion, formula: Formula) -> Stage | None:
    """The stage a portion is of; None for an ingredient, and for a preparation, which stands in a file of its own."""
    return next((stage for stage in formula.stages if portion.stage and stage.key == portion.stage), None)


def _stage_heat(stage: Stage, formula: Formula, place: Around, larder: Larder) -> Fraction:
    """kJ/kg K of what a stage is mixed of."""
    things = going_in(stage.portions, formula, place, larder)
    weight = sum((thing.portion.share for thing in things), Fraction(0))
    return sum((thing.capacity for thing in things), Fraction(0)) / weight if weight else PASTE


def _celsius(
    portion: Portion, inner: Stage | None, formula: Formula, place: Around, larder: Larder
) -> tuple[Fraction, str]:
    ingredient = portion.ingredient
    if portion.celsius is not None:
        return portion.celsius, "as the file says"
    if inner is not None:
        last = last_temperature(inner, formula, place, larder)
        return (place.air, "as warm as the room") if last is None else (last, "as its last step leaves it")
    if ingredient is not None and ingredient.kept_at is not None:
        return ingredient.kept_at, "as the larder keeps it"
    if portion.is_flour:
        return place.flour, "the kitchen's flour"
    if ingredient is not None and ingredient.class_ == "water":
        return place.tap, "from the tap"
    if ingredient is not None and _is_chilled(ingredient):
        return place.fridge, "from the fridge"
    return place.air, "as warm as the room"


def _is_chilled(ingredient: Ingredient) -> bool:
    moist = ingredient.composition.get("water", Fraction(0)) >= DRY_BELOW
    return moist and (ingredient.class_ in FROM_THE_FRIDGE or ingredient.class_ == "fat")
