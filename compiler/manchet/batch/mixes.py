"""How the dough is split over the mixer: so many equal mixes, and what each bowl gets."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from manchet.batch.model import Batch, StageBatch, Weighed
from manchet.formula.model import Who
from manchet.kitchen.model import Kitchen, Mixer
from manchet.records import NamedTuple

SOFT, STIFF = Fraction(60, 100), Fraction(55, 100)
"""Water on flour of the dough a mixer's load is stated for, and of a stiff one (Metcalfe, manuals of their mixers)."""

STIFF_LOAD = Fraction(3, 5)
"""Of the stated load, what is taken of a stiff dough: 3.4 of 5.7 kg, 6.8 of 11.3 kg (Metcalfe)."""


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
    most: Fraction | None = None
    """Grams of this dough that the mixer takes at most; None where nobody says."""

    @property
    def is_stiff(self) -> bool:
        """Whether the mixer takes less of it than it takes of a softer dough."""
        return self.mixer is not None and self.most != self.mixer.most_grams


def mixes_of(batch: Batch, kitchen: Kitchen, wet: Fraction = SOFT, fewest: int = 1) -> Mixes:
    """Split the dough into as few equal mixes as a mixer of the kitchen takes of a dough so stiff, and into `fewest` at least.

    `wet` is the water and fat in it, as a share of all flour; a dough that is not stiff, if nobody says. Each mix is exactly the total over the number. Of several mixers the one that needs the fewest mixes is taken, of
    these one whose least is reached, of these the smallest. Dough that no machine mixes is one mix.
    """
    dough = batch.dough_stage
    bowl = dough.into - _locked_in(dough)
    number, mixer = fewest, _mixer_for(dough, bowl, kitchen, wet)
    if mixer is not None:
        number = max(_mixes_needed(bowl, mixer, wet), fewest)
    grams = bowl / number
    short = mixer.least_grams - grams if mixer is not None and mixer.least_grams is not None else Fraction(0)
    return Mixes(
        number=number,
        grams=grams,
        mixer=mixer,
        under=short if short > 0 else None,
        makings=tuple(_making(stage, dough, number) for stage in batch.stages),
        most=None if mixer is None else mixer_load(mixer, wet),
    )


def mixer_load(mixer: Mixer, wet: Fraction) -> Fraction | None:
    """Grams of a dough with so much water and fat (a share of all flour) that a mixer takes at most.

    Between the soft and the stiff dough in proportion. What the kitchen says of stiff doughs goes before what is in
    print. None where the kitchen does not say what the mixer takes.
    """
    if mixer.most_grams is None:
        return None
    stiff = mixer.most_grams * STIFF_LOAD if mixer.stiff_grams is None else mixer.stiff_grams
    soft = min(max((wet - STIFF) / (SOFT - STIFF), Fraction(0)), Fraction(1))
    return stiff + (mixer.most_grams - stiff) * soft


def _making(stage: StageBatch, dough: StageBatch, number: int) -> Making:
    times = number if stage is dough or stage.stage.for_each_mix else 1
    taken = sum((w.grams for w in dough.weighed if w.portion.stage == stage.stage.key), Fraction(0))
    return Making(
        stage=stage,
        times=times,
        weighed=stage.weighed if times == 1 else tuple(w._replace(grams=w.grams / times) for w in stage.weighed),
        into=stage.into / times,
        for_each_mix=taken / number,
    )


def _locked_in(dough: StageBatch) -> Fraction:
    """What is folded into the sheet of dough later and never sees the bowl."""
    keys = {goes.key for step in dough.stage.steps if step.verb == "lock in" for goes in step.goes}
    return sum((w.grams for w in dough.weighed if w.portion.key in keys), Fraction(0))


def _mixer_for(dough: StageBatch, bowl: Fraction, kitchen: Kitchen, wet: Fraction) -> Mixer | None:
    """The mixer a step names (`mix slow 4 min in spiral`), else the one that suits best."""
    mixing = [step for step in dough.stage.steps if step.verb == "mix" and step.who is Who.MACHINE]
    if not mixing:
        return None
    named = {step.where[1].casefold() for step in mixing if step.where is not None}
    there = [m for m in kitchen.mixers if m.name.casefold() in named] or list(kitchen.mixers)
    return min(there, key=lambda m: _unsuited(bowl, m, wet), default=None)


def _unsuited(bowl: Fraction, mixer: Mixer, wet: Fraction) -> tuple[int, bool, Fraction]:
    number = _mixes_needed(bowl, mixer, wet)
    under = mixer.least_grams is not None and bowl / number < mixer.least_grams
    return number, under, mixer.most_grams or bowl


def _mixes_needed(bowl: Fraction, mixer: Mixer, wet: Fraction) -> int:
    most = mixer_load(mixer, wet)
    return 1 if most is None or most <= 0 else max(1, ceil(bowl / most))
