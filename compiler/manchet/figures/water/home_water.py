"""How warm the water is to be at home: the same heat balance, worked by hand, in a room that nobody measured."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.water.dough_temperature import Warming, balance_of
from manchet.figures.water.friction import Friction
from manchet.figures.water.mix_inputs import surroundings_in
from manchet.figures.water.stage_water import StageWater
from manchet.kitchen.model import Cold, Kitchen
from manchet.syntax.vocabulary import HOT_WATER

ROOM, TAP, FRIDGE = Fraction(21), Fraction(12), Fraction(5)
"""Celsius of a kitchen at home that does not say. Our rule."""

BY_HAND = Friction(
    Fraction(0), Fraction(0), Fraction(0), "worked by hand", "our rule: hands warm a dough by next to nothing"
)


@once
def home_waters(work: Work) -> Mapping[str, StageWater]:
    """By the key of the stage, for each that is mixed to a temperature, the dough too; a scald's water is hot anyway."""
    if work.formula.preparation:
        return {}
    place = surroundings_in(_with_usual(work.kitchen))
    found = {}
    for making in work.mixes.makings:
        stage = making.stage.stage
        balance = None if stage.word in HOT_WATER else balance_of(stage, work, place, None)
        if balance is None or not balance.free:
            continue
        warming, other = (Warming(w.wetting, BY_HAND) for w in (balance.warming, balance.other))
        balance = balance._replace(warming=warming, other=other)
        found[stage.key] = StageWater(stage, balance, balance.water(), place, None)
    return found


def _with_usual(kitchen: Kitchen) -> Kitchen:
    """What the kitchen does not say of itself, as kitchens at home are."""
    fridges = any(cold.word == "fridge" and cold.keeps is not None for cold in kitchen.colds)
    return kitchen._replace(
        air=ROOM if kitchen.air is None else kitchen.air,
        tap=TAP if kitchen.tap is None else kitchen.tap,
        colds=kitchen.colds if fridges else (*kitchen.colds, Cold("fridge", "fridge", FRIDGE)),
    )
