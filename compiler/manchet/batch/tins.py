"""How much dough a tin takes, by its volume and the kind of bread."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen, Vessel
from manchet.quantities.printing import decimal
from manchet.records import NamedTuple
from manchet.syntax.things import MEASURED


class TinRule(NamedTuple):
    """What a dough wants of a tin: millilitres for a gram of it, and what such a dough is called."""

    key: str
    divisor: Fraction
    dough: str


WHITE = TinRule("white", Fraction(178, 100), "white bread")
HALF = TinRule("half", Fraction(171, 100), "half-and-half")
WHOLE = TinRule("wholemeal", Fraction(166, 100), "wholemeal")
RYE = TinRule("rye", Fraction(140, 100), "rye")
LIDDED = TinRule("lidded", Fraction("16.387064") / Fraction("5.5"), "a lidded tin")
"""White, half-and-half and wholemeal: the published divisors 1.78, 1.71 and 1.66 (Risen Flour, "Calculating loaf tin
capacity": 1500 ml takes 842 g, 1800 ml 1011 g). Lidded: the middle of 5 to 6 g for a cubic inch (toolntricks.com:
13 x 4 x 4 inches take 1040 to 1248 g). Rye: common practice, no source."""


class TinDough(NamedTuple):
    """Grams of dough for one tin, and why."""

    grams: Fraction
    vessel: Vessel
    divisor: Fraction
    rule: str


def tin_called(name: str, kitchen: Kitchen) -> Vessel | None:
    vessel = kitchen.vessel(name)
    return vessel if vessel is not None and vessel.word in MEASURED else None


def dough_for_tin(name: str, rule: TinRule, kitchen: Kitchen) -> TinDough | None:
    """What one tin of the kitchen takes of a dough by its rule; None for a tin the kitchen does not know."""
    vessel = tin_called(name, kitchen)
    if vessel is None or vessel.millilitres is None:
        return None
    said = f"volume of the tin / {decimal(rule.divisor)} ml per gram, for {rule.dough}"
    return TinDough(vessel.millilitres / rule.divisor, vessel, rule.divisor, said)


class TinFor(NamedTuple):
    """A tin of the kitchen for a weight of dough: what it takes by the rule, and how full this weight makes it (1: just)."""

    vessel: Vessel
    takes: Fraction
    fill: Fraction


NEAR = Fraction(15, 100)
"""How far a weight may be from what a tin takes and still be baked in it. Our rule: the published divisors lie as far
apart."""


def tins_for(grams: Fraction, rule_of: Callable[[Vessel], TinRule], kitchen: Kitchen) -> tuple[TinFor, ...]:
    """The kitchen's tins for that much of a dough by its rule for each, the best first; () where none is near."""
    found = []
    for vessel in kitchen.vessels:
        tin = dough_for_tin(vessel.name, rule_of(vessel), kitchen) if vessel.word == "tin" else None
        if tin is not None and abs(grams / tin.grams - 1) <= NEAR:
            found.append(TinFor(tin.vessel, tin.grams, grams / tin.grams))
    return tuple(sorted(found, key=lambda tin: (abs(tin.fill - 1), tin.vessel.name)))


def lid_of_bake(formula: Formula) -> bool | None:
    """Whether a bake of the formula says that it is under a lid for a while, or that it never is; None where none says."""
    said = [step.lid for step in formula.steps if step.verb == "bake" and step.lid is not None]
    return any(said) if said else None


def tin_rule(formula: Formula, vessel: Vessel | None = None) -> TinRule:
    """By its kind, its lid and its flour. Rye in a closed tin fills it as rye does: it hardly rises.

    The lid is as the bake says, and as the tin says where the bake does not.
    """
    if formula.kind == "rye tin loaf":
        return RYE
    lid = lid_of_bake(formula)
    if lid or (lid is None and vessel is not None and vessel.lidded):
        return LIDDED
    if formula.kind == "rye hearth loaf":
        return RYE
    whole = sum((line.share for line in formula.overall if line.is_flour and "whole" in fold(line.name)), Fraction(0))
    if whole > Fraction(3, 4):
        return WHOLE
    return HALF if whole >= Fraction(1, 4) else WHITE
