"""The water of what is mixed before the dough, a poolish or a levain that is to come out warm: by the dough's own balance."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.estimate import Estimate
from manchet.figures.figure import Figure, Given
from manchet.figures.water.dough_temperature import RULE, SOURCE, Balance, balance
from manchet.figures.water.ice import ice_in
from manchet.figures.water.mix_inputs import Surroundings, surroundings
from manchet.figures.water.water_grid import BOILING
from manchet.formula.model import Stage
from manchet.quantities.printing import decimal, round_to
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import HOT_WATER


class StageWater(NamedTuple):
    """The liquid of one stage: Celsius, and grams of ice in one making of it (None: the tap is not known)."""

    stage: Stage
    balance: Balance
    celsius: Estimate
    around: Surroundings
    ice: Fraction | None

    @property
    def can_be(self) -> bool:
        """Not colder than ice, nor hotter than water gets."""
        return self.balance.coldest <= self.celsius.likely < BOILING

    @property
    def liquids(self) -> frozenset[str]:
        """The keys of the lines that are to be so warm."""
        return frozenset(thing.portion.key for thing in self.balance.free)


@once
def stage_waters(work: Work) -> Mapping[str, StageWater]:
    """By the key of the stage, for each that is mixed to a temperature in a kitchen that gives its own.

    None for the dough, which has a sheet's grid, and for a scald.
    """
    kitchen = work.kitchen
    if work.formula.preparation or (kitchen.air is None and kitchen.flour is None):
        return {}
    found = {}
    for making in work.mixes.makings[:-1]:
        stage = making.stage.stage
        met = None if stage.word in HOT_WATER else balance(work, stage)
        if met is None or not met.free:
            continue
        celsius = met.water()
        keys = {thing.portion.key for thing in met.free}
        grams = sum((w.grams for w in making.weighed if w.portion.key in keys), Fraction(0))
        tap = kitchen.tap if met.of_water else None
        ice = None if tap is None or celsius.likely < met.coldest else ice_in(grams, tap, celsius.likely)
        found[stage.key] = StageWater(stage, met, celsius, surroundings(work), ice)
    return found


def stage_water_figures(waters: Mapping[str, StageWater]) -> dict[str, Figure]:
    """One a stage, by the name `poolish: water temperature`."""
    return {f"{water.stage.name}: {water.balance.liquid} temperature": _figure(water) for water in waters.values()}


def _figure(water: StageWater) -> Figure:
    stage, balance = water.stage, water.balance
    where = stage.place.where
    low, high = (decimal(round_to(end, 0)) for end in (water.celsius.low, water.celsius.high))
    friction = balance.warming.friction
    inputs: list[Given | Figure] = [
        Given(f"{stage.name} is to come out at", balance.wanted, "C", where),
        Figure("friction", round_to(friction.likely, 1), "C", friction.rule, friction.inputs, friction.source),
        Given("room, and the bowl", balance.room, "C", "the kitchen"),
    ]
    inputs += [
        Given(f"{thing.portion.name} ({thing.why})", round_to(thing.celsius, 1), "C",
              thing.portion.place.where)
        for thing in balance.rest
    ]  # fmt: skip
    if water.ice:
        inputs.append(Given("of it ice", round_to(water.ice, 0), "g", "ice = water x (tap - wanted) / (tap + 80)"))
    name = f"{stage.name}, {balance.liquid} temperature"
    return Figure(
        name, round_to(water.celsius.likely, 0), "C", f"an estimate, {low} to {high} C: {RULE}", tuple(inputs), SOURCE
    )
