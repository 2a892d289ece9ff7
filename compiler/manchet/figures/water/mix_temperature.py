"""How warm a mix becomes before it is worked: a heat balance of what goes into the bowl, an estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.mixes import Mixes, mixes_of
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Place
from manchet.figures.limits.lookup import limit
from manchet.figures.water.dough_temperature import Balance, balance_of
from manchet.figures.water.mix_inputs import around, going_in, last_temperature, met
from manchet.formula.model import Stage


def mix_temperature(work: Work, stage: Stage) -> Fraction:
    """Celsius of everything weighed into a stage at its start.

    Work of the mixer and heat of wetting are left out, so the true mix is some degrees warmer.
    """
    place = around(work.kitchen, _mixes(work).makings)
    things = going_in((p for p in stage.portions if not p.held), work.formula, place, work.larder)
    warmth = met(things)
    return place.air if warmth is None else warmth


def hottest_place(work: Work, stage: Stage) -> Place:
    """Where the file names the hottest thing that goes into a stage."""
    place = around(work.kitchen, _mixes(work).makings)
    by_key = {other.key: other for other in work.formula.stages if other.key != stage.key}
    found: list[tuple[Fraction, Place]] = []
    for portion in stage.portions:
        inner = by_key.get(portion.stage)
        warmth = portion.celsius
        if warmth is None and inner is not None:
            last = last_temperature(inner, work.formula, place, work.larder)
            warmth = None if last is None else last.likely
        if warmth is not None:
            found.append((warmth, portion.place))
    return max(found, key=lambda hot: hot[0], default=(Fraction(0), stage.place))[1]


def dough_balance(work: Work) -> Balance | None:
    """The balance of a dough that is to reach a temperature; None where the kitchen gives none to reckon with."""
    kitchen, formula = work.kitchen, work.formula
    if kitchen.air is None or formula.preparation:
        return None
    mixes = _mixes(work)
    place = around(kitchen, mixes.makings)
    return balance_of(work.batch.stages[-1].stage, formula, place, mixes.mixer, work.larder)


def no_water_does_it(work: Work) -> bool:
    """In this room the dough's water would have to be colder than ice, or hotter than a tap gives: that is told by itself."""
    balance, hottest = dough_balance(work), limit("hot-tap")
    if balance is None or not balance.free or hottest is None:
        return False
    water = balance.water()
    return water.high < balance.coldest or water.low > hottest


def _mixes(work: Work) -> Mixes:
    return mixes_of(work.batch, work.kitchen, work.totals.wet)
