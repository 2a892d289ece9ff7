"""How the dough is split over the mixer: so many equal mixes, and what each bowl gets."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.formula.model import StageBatch, Weighed
from manchet.larder.kitchen import Mixer


class Making(NamedTuple):
    """One stage as it is made: `times` over, each time with these weights (grams, exact).

    A stage made once for all mixes has `times` 1 and its whole lot in `weighed`; the dough, and a stage `made for each
    mix`, have as many times as there are mixes and an equal part of the lot in each.
    """

    stage: StageBatch
    times: int
    weighed: tuple[Weighed, ...]
    into: Fraction
    """Grams in one making."""
    for_each_mix: Fraction
    """Grams of it that go into one mix of the dough, however often it is made; 0 where the dough takes none."""


class Mixes(NamedTuple):
    """`number` equal mixes of `grams` dough in the bowl."""

    number: int
    grams: Fraction
    mixer: Mixer | None
    """None: by hand, or the kitchen has no mixer that says what it takes."""
    under: Fraction | None
    """By how many grams each mix is less than the mixer's least; None if it is not."""
    makings: tuple[Making, ...]
    """In working order, the dough last."""
