"""Lye in what is weighed, and in a bath that touches the bread."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.formula.model import Stage, Step
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple


def lye_in(ingredient: Ingredient | None) -> Fraction:
    """How much of it is lye, by weight: a liquor is what its water leaves."""
    if ingredient is None or ingredient.class_ != "lye":
        return Fraction(0)
    return 1 - ingredient.composition.get("water", Fraction(0)) / 100


class Bath(NamedTuple):
    """Lye that a step brings onto the bread, or boils it in."""

    strength: Fraction | None
    """Share by weight; None where nobody says: lye by its name alone, or a bath whose file is not here."""


def strength_of(stage: Stage) -> Fraction:
    """The lye of all that is weighed into it."""
    whole = sum((p.share for p in stage.portions), Fraction(0))
    return sum((lye_in(p.ingredient) * p.share for p in stage.portions), Fraction(0)) / whole if whole else Fraction(0)


def bath_of(step: Step, work: Work) -> Bath | None:
    """The lye bath of a step; None where it has none."""
    name, key = step.bath, step.bath
    if step.applied is not None:
        strength = lye_in(step.applied.ingredient)
        if strength:
            return Bath(None if strength == 1 else strength)
        name, key = step.applied.name, step.applied.stage
    stage = work.formula.stage(key)
    if stage is None and key in work.preparations:
        stage = work.preparations[key].dough
    if stage is not None:
        return Bath(strength_of(stage)) if strength_of(stage) else None
    return Bath(None) if "lye" in name.casefold().split() else None
