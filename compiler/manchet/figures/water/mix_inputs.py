"""How warm each thing is when it goes into the bowl, and what it takes to warm it."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.estimate import Estimate
from manchet.figures.fermentation.cooling import after_standing, exactly
from manchet.figures.water.heat import BOWL, PASTE, specific_heat
from manchet.formula.model import Formula, Portion, Stage
from manchet.kitchen.model import Kitchen
from manchet.larder.book import DRY_BELOW
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import decimal
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BOILS, BRINGS_IN, COOLS_BY_ITSELF

NOTHING = Fraction(0)

ROOM = Fraction(20)
"""Celsius, of whatever the file gives no temperature and the kitchen none either."""

FROM_THE_FRIDGE = frozenset({"dairy", "egg", "yeast", "sweet-dough yeast"})
"""Classes that come from the kitchen's fridge when they are moist (milk, eggs, fresh yeast) and nothing is said; butter
does too. Common practice."""

STANDS_OUT = 2 * 3600
"""Seconds after which a stage that stands nowhere in particular, and is not hot, has the room's temperature. Our rule."""

HOTTER = Fraction(5)
"""Celsius above the room from which a stage counts as hot: what it has lost by then, and what was taken of it, matters.
Our rule."""

SOME = Fraction(5000)
"""Grams of a stage of which nobody says how much is made: about a bowl. Our rule."""


class Surroundings(NamedTuple):
    """The temperatures things have if nothing else is said, Celsius."""

    air: Fraction
    flour: Fraction
    tap: Fraction
    fridge: Fraction


class MixInput(NamedTuple):
    """One thing that goes in: Celsius, kJ/kg K, why it is so warm, and between what it may lie if that is an estimate."""

    portion: Portion
    celsius: Fraction
    specific: Fraction
    why: str
    ends: tuple[Fraction, Fraction] | None = None

    @property
    def capacity(self) -> Fraction:
        """kJ for 1 C, for each kg of all flour."""
        return self.portion.share * self.specific

    @property
    def heat(self) -> Fraction:
        """kJ above 0 C, for each kg of all flour."""
        return self.capacity * self.celsius

    @property
    def colder(self) -> Fraction:
        """kJ, at most, by which it may bring less."""
        return NOTHING if self.ends is None else self.capacity * (self.celsius - self.ends[0])

    @property
    def warmer(self) -> Fraction:
        """kJ, at most, by which it may bring more."""
        return NOTHING if self.ends is None else self.capacity * (self.ends[1] - self.celsius)


@once
def surroundings(work: Work) -> Surroundings:
    """Those of the kitchen it is made in."""
    return surroundings_in(work.kitchen)


def surroundings_in(kitchen: Kitchen) -> Surroundings:
    """The kitchen's own figures; what it does not give is as warm as its air, or 20 C."""
    air = kitchen.air if kitchen.air is not None else ROOM
    fridges = (cold.keeps for cold in kitchen.colds if cold.word == "fridge" and cold.keeps is not None)
    return Surroundings(
        air=air,
        flour=kitchen.flour if kitchen.flour is not None else air,
        tap=kitchen.tap if kitchen.tap is not None else air,
        fridge=next(fridges, air),
    )


def mix_inputs(portions: Iterable[Portion], work: Work, place: Surroundings) -> tuple[MixInput, ...]:
    """Each portion as it is weighed."""
    return tuple(_mix_input(portion, work, place) for portion in portions)


def temperature_together(things: Iterable[MixInput]) -> Fraction | None:
    """Celsius at which things meet: none of them gains or loses but to another. None if there is nothing."""
    things = tuple(things)
    capacity = sum((thing.capacity for thing in things), Fraction(0))
    return sum((thing.heat for thing in things), Fraction(0)) / capacity if capacity else None


def last_temperature(stage: Stage, work: Work, place: Surroundings) -> Estimate | None:
    """How warm a stage is when it is used: the last figure its steps reach or stand in; how far a hot one has cooled is an
    estimate.

    None: it has stood long enough to be as warm as the room, or nothing is said.
    """
    warmth: Estimate | None = None
    inside = [p for p in stage.portions if not p.held]
    if any(p.celsius is not None for p in inside):
        warmth = _together_in_a_bowl(inside, work, place)
    for step in stage.steps:
        if step.verb in BRINGS_IN:
            keys = {goes.key for goes in step.goes}
            added = [p for p in stage.portions if p.held and p.key in keys and p not in inside]
            if any(goes.celsius is not None for goes in step.goes):
                warmth = _together_in_a_bowl([*inside, *added], work, place, inside, warmth)
            inside += added
        reached = next((r.value.likely for r in step.reaches if r.what in ("temperature", "core")), None)
        if reached is not None:
            warmth = exactly(reached)
        elif step.ramp is not None:
            warmth = exactly(step.ramp[1].likely)
        elif step.heats and step.verb != "bake":
            warmth = exactly(step.heats[0].celsius.likely)
        elif step.verb in BOILS:
            warmth = exactly(Fraction(100))
        elif step.verb in COOLS_BY_ITSELF and step.time is not None:
            if warmth is not None and warmth.likely - place.air >= HOTTER:
                specific = specific_heat_of(work, stage)
                to = place.fridge if step.verb == "chill" else place.air
                warmth = after_standing(warmth, step.time.likely, _made_at_once(work, stage) or SOME, to, specific)
            elif step.time.likely >= STANDS_OUT:
                warmth = None
    return warmth


@once
def _made_at_once(work: Work, stage: Stage) -> Fraction:
    """Grams in one making: a large hot stage keeps its heat, a small one loses it."""
    (making,) = (making for making in work.mixes.makings if making.stage.stage.key == stage.key)
    return making.stage.out / making.times


def _together_in_a_bowl(
    portions: Iterable[Portion],
    work: Work,
    place: Surroundings,
    before: Iterable[Portion] = (),
    warmth: Estimate | None = None,
) -> Estimate | None:
    """At what things meet; the colder end is with a bowl, as warm as the room, that takes its part of the heat. What was in
    it `before` has the warmth that its steps have brought it to, where they have."""
    there = tuple(before) if warmth is not None else ()
    things = tuple(
        thing._replace(celsius=warmth.likely) if warmth is not None and thing.portion in there else thing
        for thing in mix_inputs(portions, work, place)
    )
    met = temperature_together(things)
    if met is None:
        return None
    with_bowl = (met + BOWL * place.air) / (1 + BOWL)
    return Estimate(met, min(met, with_bowl), max(met, with_bowl))


def _inner(portion: Portion, formula: Formula) -> Stage | None:
    """The stage a portion is of; None for an ingredient, and for a preparation, which stands in a file of its own."""
    return formula.stage(portion.stage)


@once
def specific_heat_of(work: Work, stage: Stage) -> Fraction:
    """kJ/kg K of what a stage is mixed of."""
    weight = sum((portion.share for portion in stage.portions), Fraction(0))
    capacity = sum((portion.share * _specific_heat(portion, work) for portion in stage.portions), Fraction(0))
    return capacity / weight if weight else PASTE


def _specific_heat(portion: Portion, work: Work) -> Fraction:
    inner = _inner(portion, work.formula)
    if inner is not None:
        return specific_heat_of(work, inner)
    return PASTE if portion.ingredient is None else specific_heat(portion.ingredient, work.larder)


def _mix_input(portion: Portion, work: Work, place: Surroundings) -> MixInput:
    specific, inner = _specific_heat(portion, work), _inner(portion, work.formula)
    if inner is None or portion.celsius is not None:
        celsius, why = _celsius(portion, place)
        return MixInput(portion, celsius, specific, why)
    last = last_temperature(inner, work, place)
    if last is None:
        return MixInput(portion, place.air, specific, "as warm as the room")
    if last.low == last.high:
        return MixInput(portion, last.likely, specific, "as its last step leaves it")
    why = f"an estimate of how far it has cooled, {decimal(last.low, 0)} to {decimal(last.high, 0)} C"
    return MixInput(portion, last.likely, specific, why, (last.low, last.high))


def _celsius(portion: Portion, place: Surroundings) -> tuple[Fraction, str]:
    ingredient = portion.ingredient
    if portion.celsius is not None:
        return portion.celsius, "as the file says"
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
