"""How warm a mix becomes before it is worked: a heat balance of what goes into the bowl, an estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Place
from manchet.figures.dough_temperature import Balance, balance_of
from manchet.figures.going_in import around, going_in, last_temperature, met
from manchet.formula.mixes import Mixes, mixes_of
from manchet.formula.model import Stage


def mix_temperature(subject: Subject, stage: Stage) -> Fraction:
    """Celsius of everything weighed into a stage at its start.

    Work of the mixer and heat of wetting are left out, so the true mix is some degrees warmer.
    """
    place = around(subject.kitchen, _mixes(subject).makings)
    things = going_in((p for p in stage.portions if not p.held), subject.formula, place, subject.larder)
    warmth = met(things)
    return place.air if warmth is None else warmth


def hottest_place(subject: Subject, stage: Stage) -> Place:
    """Where the file names the hottest thing that goes into a stage."""
    place = around(subject.kitchen, _mixes(subject).makings)
    by_key = {other.key: other for other in subject.formula.stages if other.key != stage.key}
    found: list[tuple[Fraction, Place]] = []
    for portion in stage.portions:
        inner = by_key.get(portion.stage)
        warmth = portion.celsius
        if warmth is None and inner is not None:
            last = last_temperature(inner, subject.formula, place, subject.larder)
            warmth = None if last is None else last.likely
        if warmth is not None:
            found.append((warmth, portion.place))
    return max(found, key=lambda hot: hot[0], default=(Fraction(0), stage.place))[1]


def dough_balance(subject: Subject) -> Balance | None:
    """The balance of a dough that is to reach a temperature; None where the kitchen gives none to reckon with."""
    kitchen, formula = subject.kitchen, subject.formula
    if kitchen.air is None or formula.preparation:
        return None
    mixes = _mixes(subject)
    place = around(kitchen, mixes.makings)
    return balance_of(subject.batch.stages[-1].stage, formula, place, mixes.mixer, subject.larder)


def no_water_does_it(subject: Subject) -> bool:
    """In this room the dough's water would have to be colder than ice, or hotter than a tap gives: that is told by itself."""
    balance, hottest = dough_balance(subject), limit("hot-tap")
    if balance is None or not balance.free or hottest is None:
        return False
    water = balance.water()
    return water.high < balance.coldest or water.low > hottest


def _mixes(subject: Subject) -> Mixes:
    return mixes_of(subject.batch, subject.kitchen, subject.totals.wet)
