"""What goes into a vessel or onto a piece: an ingredient dissolved into what it is made of, a stage, a preparation."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction
from functools import cached_property

from manchet.account.mixture import NO_MIXTURE, Component, Mixture, TakenUp, held_alone, put_together
from manchet.account.vessel import losing, vessel_after
from manchet.batch.pieces import PieceWeights
from manchet.batch.way_of_piece import Heated, Lost, PiecesMade, Touched, way_of_piece
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, Portion, Stage
from manchet.formula.step import Applied, Step
from manchet.formula.what_goes import LossOf, loss_of
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple

NOTHING = Fraction(0)
ONE = Fraction(1)
UNKNOWN_CLASS = "other"

MOST_OF_A_BATH = Fraction(5, 100)
MOST_OF_FAT = Fraction(30, 100)
"""Of its weight a piece takes up no more of what it is boiled or fried in. Our rules: a bagel gains 2 to 4 % in the kettle, a doughnut
holds 15 to 25 % of the fat (common practice)."""


class Stores(NamedTuple):
    """What a house has to make things of: ingredients, and preparations by key."""

    larder: Larder
    preparations: Mapping[str, Formula]


class Makings:
    """What a formula is made of, with what its larder and its bakery's preparations know. Of no size: every mixture that it gives
    is per gram of all flour, or of what was asked for."""

    def __init__(self, formula: Formula, stores: Stores, above: frozenset[str] = frozenset()) -> None:
        self.formula = formula
        self.stores = stores
        self._above = above | {fold(formula.name)}
        """What this is made for, so that nothing is made of itself."""
        self._stages: dict[str, Mixture] = {}
        self._made: dict[str, Mixture] = {}

    @cached_property
    def dough(self) -> Mixture:
        """The dough, or all of a preparation, when its vessel is done with; of a dish what is laid down at the bottom."""
        if self.formula.dish:
            return vessel_after(self.formula.dough, self.of_portion, self._water, ())
        return self.stage(self.formula.dough)

    def stage(self, stage: Stage) -> Mixture:
        if stage.key not in self._stages:
            self._stages[stage.key] = vessel_after(stage, self.of_portion, self._water)
        return self._stages[stage.key]

    def of_portion(self, portion: Portion) -> Mixture:
        if portion.ingredient is not None:
            return self.of_ingredient(portion.ingredient, portion.share)
        return self._made_there(portion.stage, portion.name, portion.share)

    def of_applied(self, applied: Applied, grams: Fraction) -> Mixture:
        if applied.ingredient is not None:
            return self.of_ingredient(applied.ingredient, grams)
        return self._made_there(applied.stage, applied.name, grams)

    def of_ingredient(self, ingredient: Ingredient, grams: Fraction) -> Mixture:
        """Dissolved into what the larder says it is made of: a starter into its own flour and its water."""
        parts = [(part, self.stores.larder.ingredient(part.name)) for part in ingredient.made_of]
        if not parts or any(known is None for _, known in parts):
            return held_alone(ingredient, grams)
        inside = [self.of_ingredient(known, grams * part.share) for part, known in parts if known is not None]
        return put_together(inside).came_in(Component(ingredient.name, ingredient.listed_as, ingredient.allergens))

    def _made_there(self, key: str, name: str, grams: Fraction) -> Mixture:
        own = self.formula.stage(key)
        if own is not None:
            return self.stage(own).amount(grams).came_in(Component(own.name or own.word, own.listed_as))
        made = self._preparation(key)
        if made is None or not made.weight:
            return held_alone(Ingredient(name=name, class_=UNKNOWN_CLASS), grams)
        preparation = self.stores.preparations[key]
        sale = preparation.sale
        listed_as, contacts = ((), ()) if sale is None else (sale.listed_as, sale.contacts)
        return made.amount(grams).came_in(Component(preparation.name, listed_as, contacts=contacts))

    def _preparation(self, key: str) -> Mixture | None:
        """What a preparation of the bakery comes to; None for one that cannot be read, or is made of itself."""
        preparation = self.stores.preparations.get(key)
        if preparation is None or key in self._above:
            return None
        if key not in self._made:
            inside = Makings(preparation, self.stores, self._above)
            part = self.formula.part(key)
            self._made[key] = inside.whole("" if part is None else part.noun)
        return self._made[key]

    def whole(self, noun: str = "") -> Mixture:
        """All of a preparation, with what touches it in all, per gram that is weighed; of what makes several things, that of a noun."""
        formula = self.formula
        written = PieceWeights(formula).written_flour().value or ONE
        noun = noun or (formula.makes[0].noun if formula.makes else "")
        pieces = sum((line.number or NOTHING for line in formula.makes), NOTHING)
        dough = self.dough.times(written)
        one = dough.times(1 / pieces) if pieces else dough
        made = self.finished(noun, one, formula.makes)
        return NO_MIXTURE if not made.weight else made.times(1 / written)

    def finished(self, noun: str, dough: Mixture, made: Iterable[PiecesMade]) -> Mixture:
        """What a piece of dough comes to on its way to the shelf, by what is said of its losses."""
        inside = dough
        for event in way_of_piece(self.formula, noun, made):
            if isinstance(event, Touched):
                inside = put_together([inside, self.of_applied(event.applied, event.grams)])
            elif isinstance(event, Heated):
                inside = self._heated(inside, event.step)
            elif isinstance(event, Lost) and event.said:
                inside = losing(inside, event.share, LossOf.WATER if event.step is None else loss_of(event.step))
        return inside

    def _heated(self, inside: Mixture, step: Step) -> Mixture:
        if step.bath:
            most = inside.weight * MOST_OF_A_BATH
            inside = inside.taking_up(TakenUp(step.bath, self._made_there(step.bath, step.bath, ONE), most))
        fat = self._fried_in(step)
        if fat is not None:
            most = inside.weight * MOST_OF_FAT
            inside = inside.taking_up(TakenUp(fat.name, self.of_ingredient(fat, ONE), most))
        return inside.through_heat()

    def _fried_in(self, step: Step) -> Ingredient | None:
        """The fat of a step whose place names one: nobody has said how much of it stays in the piece."""
        if step.verb != "fry" or step.where is None or step.applied is not None:
            return None
        found = self.stores.larder.ingredient(step.where[1])
        return found if found is not None and found.class_ == "fat" else None

    @cached_property
    def _water(self) -> Ingredient:
        return self.stores.larder.ingredient("water") or Ingredient(name="water", class_="water")
