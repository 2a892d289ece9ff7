"""What lies in a vessel, and what happens to it: each food with the line of temperatures that it has behind it.

A preparation is judged where it ends: what is made of raw egg and filled into a bun goes through the bun's bake too.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.cautions.at import CautionPlace, Done, done_in, ways_done
from manchet.cautions.legs import Leg, line_of
from manchet.figures.water.mix_temperature import mix_temperature
from manchet.formula.model import Formula, Portion, Stage, Step
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple

DEEPEST = 100
"""Vessels in one another. What is deeper down is left out; a circle of preparations is reported where names are bound."""
MOST = 2000
"""Foods in one vessel, of all that is made of others. Our own rule."""


class Foodstuff(NamedTuple):
    """A thing of the larder in a vessel."""

    name: str
    """As the file has it."""
    ingredient: Ingredient
    share: Fraction
    """Of all that is weighed into the vessel; 0 of what is put on."""
    since: int = 0
    """The leg with which it comes in."""
    before: tuple[Leg, ...] = ()
    """What it went through before."""
    put_on: bool = False
    """It touches the bread, and is no part of the dough."""


class FoodVessel(NamedTuple):
    """What is made in one vessel: a stage, a preparation, or a bread on its way from the dough to the end."""

    formula: Formula
    stage: Stage
    legs: tuple[Leg, ...]
    foods: tuple[Foodstuff, ...]

    def line(self, food: Foodstuff) -> tuple[Leg, ...]:
        """All that a food of it goes through, up to the end."""
        return food.before + self.legs[food.since :]

    def of_class(self, *classes: str) -> tuple[Foodstuff, ...]:
        return tuple(food for food in self.foods if food.ingredient.class_ in classes)

    def share(self, *classes: str) -> Fraction:
        """Of all that is weighed into it, as it is weighed."""
        return sum((food.share for food in self.of_class(*classes)), Fraction(0))

    @property
    def last_heat(self) -> int | None:
        """Which of its legs heats it last."""
        return max((n for n, leg in enumerate(self.legs) if leg.heats), default=None)

    @property
    def end(self) -> CautionPlace:
        """The last step, the stage as a whole where it has none."""
        return self.legs[-1].at if self.legs else CautionPlace(self.stage.key)


class _Vessels:
    """The vessels that a formula draws on, each filled once."""

    def __init__(self, work: Work) -> None:
        self.formula, self.preparations = work.formula, work.preparations
        self.known: dict[tuple[str, str], FoodVessel | None] = {}

    def called(self, key: str, formula: Formula, deep: int = 0) -> FoodVessel | None:
        """That of a stage of the formula, or of a preparation of the bakery; None where none is sound."""
        owner = formula
        stage = formula.stage(key)
        if stage is None and key in self.preparations:
            owner = self.preparations[key]
            stage = owner.dough
        if stage is None or deep > DEEPEST:
            return None
        slot = (owner.name, stage.key)
        if slot not in self.known:
            self.known[slot] = None  # a circle ends here
            self.known[slot] = self.filled(owner, stage, line_of(done_in(stage, owner)), deep)
        return self.known[slot]

    def filled(self, owner: Formula, stage: Stage, legs: tuple[Leg, ...], deep: int = 0) -> FoodVessel:
        return FoodVessel(owner, stage, legs, tuple(self._foods(owner, stage, legs, deep))[:MOST])

    def applied(self, step: Step, since: int) -> Iterator[Foodstuff]:
        """What a step puts on or into the bread."""
        goods = step.applied
        if goods is None:
            return
        if goods.ingredient is not None:
            yield Foodstuff(goods.name, goods.ingredient, Fraction(0), since, (), True)
        for food in self._made(goods.stage, self.formula, 0):
            yield food._replace(share=Fraction(0), since=since, put_on=True)

    def _foods(self, owner: Formula, stage: Stage, legs: tuple[Leg, ...], deep: int) -> Iterator[Foodstuff]:
        whole = sum((portion.share for portion in stage.portions), Fraction(0))
        for portion in stage.portions:
            share = portion.share / whole if whole else Fraction(0)
            since = _comes_in(portion, legs)
            if portion.ingredient is not None:
                yield Foodstuff(portion.name, portion.ingredient, share, since)
            elif portion.stage != stage.key:
                for food in self._made(portion.stage, owner, deep + 1):
                    yield food._replace(share=food.share * share, since=since)

    def _made(self, key: str, formula: Formula, deep: int) -> Iterator[Foodstuff]:
        """The foods of another vessel, with what they went through there; shares are of that vessel."""
        vessel = self.called(key, formula, deep) if key else None
        if vessel is not None:
            for food in vessel.foods:
                yield food._replace(before=vessel.line(food), since=0, put_on=False)


def _comes_in(portion: Portion, legs: Iterable[Leg]) -> int:
    if not portion.held:
        return 0
    return next((n for n, leg in enumerate(legs) if any(goes.key == portion.key for goes in leg.step.goes)), 0)


@once
def _vessels(work: Work) -> _Vessels:
    return _Vessels(work)


@once
def vessels_of(work: Work) -> tuple[FoodVessel, ...]:
    """A preparation, or what a bread's dough or a dish is made of: what is done to these themselves is a way of `breads_of`."""
    formula, known = work.formula, _vessels(work)
    stages = formula.stages if formula.preparation and not formula.dish else formula.stages[:-1]
    return tuple(
        known.filled(formula, stage, line_of(done_in(stage, formula), mix_temperature(work, stage))) for stage in stages
    )


@once
def breads_of(work: Work) -> tuple[FoodVessel, ...]:
    """What is baked, a way each, and a dish as it is built; () of a preparation."""
    if work.formula.preparation and not work.formula.dish:
        return ()
    return tuple(_way(work, done) for done in ways_done(work.formula))


def _way(work: Work, done: tuple[Done, ...]) -> FoodVessel:
    formula, known = work.formula, _vessels(work)
    dough = known.filled(formula, formula.dough, line_of(done))
    put_on = [food for number, (_, step) in enumerate(done) for food in known.applied(step, number)]
    return dough._replace(foods=(*dough.foods, *put_on))


def put_on_by(work: Work, step: Step) -> tuple[Foodstuff, ...]:
    """What a step puts on or into the bread, with what it went through before."""
    return tuple(_vessels(work).applied(step, 0))


def vessel_called(work: Work, key: str) -> FoodVessel | None:
    """That of a stage of this formula or of a preparation of the bakery; None where none is sound."""
    return _vessels(work).called(key, work.formula) if key else None
