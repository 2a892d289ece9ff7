"""How warm a mix becomes before it is worked: a heat balance of what goes into the bowl, an estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.diagnostics.diagnostic import Place
from manchet.figures.limits.lookup import limit
from manchet.figures.water.dough_temperature import Balance, balance
from manchet.figures.water.mix_inputs import last_temperature, mix_inputs, surroundings, temperature_together
from manchet.figures.water.water_grid import DoughWater, water_of
from manchet.formula.model import Stage


@once
def mix_temperature(work: Work, stage: Stage) -> Fraction:
    """Celsius of everything weighed into a stage at its start.

    Work of the mixer and heat of wetting are left out, so the true mix is some degrees warmer.
    """
    place = surroundings(work)
    warmth = temperature_together(mix_inputs((p for p in stage.portions if not p.held), work, place))
    return place.air if warmth is None else warmth


@once
def hottest_place(work: Work, stage: Stage) -> Place:
    """Where the file names the hottest thing that goes into a stage."""
    place = surroundings(work)
    found: list[tuple[Fraction, Place]] = []
    for portion in stage.portions:
        inner = work.formula.stage(portion.stage)
        warmth = portion.celsius
        if warmth is None and inner is not None:
            last = last_temperature(inner, work, place)
            warmth = None if last is None else last.likely
        if warmth is not None:
            found.append((warmth, portion.place))
    return max(found, key=lambda hot: hot[0], default=(Fraction(0), stage.place))[1]


def dough_balance(work: Work) -> Balance | None:
    """The balance of a dough that is to reach a temperature; None where the kitchen gives none to reckon with."""
    return None if work.kitchen.air is None or work.formula.preparation else balance(work, work.dough.stage)


def dough_water(work: Work) -> DoughWater | None:
    """What a dough's liquid is to be, as the sheet has it; None where none is free, and where the kitchen says no warmth."""
    return None if dough_balance(work) is None else water_of(work)


def no_water_does_it(work: Work) -> bool:
    """In this room the dough's water would have to be colder than ice, or hotter than a tap gives: that is told by itself."""
    met, hottest = dough_water(work), limit("hot-tap")
    return met is not None and hottest is not None and (not met.can_be or met.celsius.low > hottest)
