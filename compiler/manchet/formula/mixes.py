"""How the dough is split over the mixer: so many equal mixes, and what each bowl gets."""

from __future__ import annotations

from fractions import Fraction
from math import ceil
from typing import NamedTuple

from manchet.formula.model import Batch, StageBatch, Weighed, Work
from manchet.larder.kitchen import Kitchen, Mixer


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


def mixes_of(batch: Batch, kitchen: Kitchen) -> Mixes:
    """Split the dough into as few equal mixes as a mixer of the kitchen takes.

    Each mix is exactly the total over the number. Of several mixers the one that needs the fewest mixes is taken, of
    these one whose least is reached, of these the smallest. Dough that no machine mixes is one mix.
    """
    dough = batch.stages[-1]
    bowl = dough.into - _locked_in(dough)
    number, mixer = 1, _mixer_for(dough, bowl, kitchen)
    if mixer is not None:
        number = _mixes_needed(bowl, mixer)
    grams = bowl / number
    short = mixer.least_grams - grams if mixer is not None and mixer.least_grams is not None else Fraction(0)
    return Mixes(
        number=number,
        grams=grams,
        mixer=mixer,
        under=short if short > 0 else None,
        makings=tuple(_making(stage, dough, number) for stage in batch.stages),
    )


def _making(stage: StageBatch, dough: StageBatch, number: int) -> Making:
    times = number if stage is dough or stage.stage.for_each_mix else 1
    taken = sum((w.grams for w in dough.weighed if w.portion.stage == stage.stage.key), Fraction(0))
    return Making(
        stage=stage,
        times=times,
        weighed=tuple(w._replace(grams=w.grams / times) for w in stage.weighed),
        into=stage.into / times,
        for_each_mix=taken / number,
    )


def _locked_in(dough: StageBatch) -> Fraction:
    """What is folded into the sheet of dough later and never sees the bowl."""
    keys = {goes.key for step in dough.stage.steps if step.verb == "lock in" for goes in step.goes}
    return sum((w.grams for w in dough.weighed if w.portion.key in keys), Fraction(0))


def _mixer_for(dough: StageBatch, bowl: Fraction, kitchen: Kitchen) -> Mixer | None:
    """The mixer a step names (`mix slow 4 min in spiral`), else the one that suits best."""
    mixing = [step for step in dough.stage.steps if step.verb == "mix" and step.work is Work.MACHINE]
    if not mixing:
        return None
    named = {step.where[1].casefold() for step in mixing if step.where is not None}
    there = [m for m in kitchen.mixers if m.name.casefold() in named] or list(kitchen.mixers)
    return min(there, key=lambda m: _unsuited(bowl, m), default=None)


def _unsuited(bowl: Fraction, mixer: Mixer) -> tuple[int, bool, Fraction]:
    number = _mixes_needed(bowl, mixer)
    under = mixer.least_grams is not None and bowl / number < mixer.least_grams
    return number, under, mixer.most_grams or bowl


def _mixes_needed(bowl: Fraction, mixer: Mixer) -> int:
    if mixer.most_grams is None or mixer.most_grams <= 0:
        return 1
    return max(1, ceil(bowl / mixer.most_grams))
