"""How old a bread may be at its end, and how long it takes to be fit for it: as file and kitchen say, else by its kind."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.day.said import Finish, Want
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import Kind

HOUR = 3600
RYE, LOAF, SMALL, DRY = Fraction(48 * HOUR), Fraction(12 * HOUR), Fraction(4 * HOUR), Fraction(14 * 24 * HOUR)
"""Seconds from out of the oven after which a rye, a wheat loaf or what is wrapped warm, a roll or sweet good, a crisp is sold as
fresh no longer. Our own rule: without one, what is asked for on a day could be baked the day before."""
PACKS_LOAF, PACKS_SMALL = Fraction(2 * HOUR), Fraction(40 * 60)
"""Seconds after which a loaf, and a smaller piece, is cold enough to pack where the kitchen does not say. Common practice."""


class Oldest(NamedTuple):
    """Seconds from out of the oven; `of_kind` is the kind whose default it is, "" where a file says it."""

    seconds: Fraction
    of_kind: str


def oldest_of(want: Want, work: Work) -> Oldest:
    if want.age is not None and want.age.high is not None:
        return Oldest(want.age.high, "")
    return Oldest(_by_kind(work.bread), work.kind or "bread of no kind")


def _by_kind(kind: Kind) -> Fraction:
    if kind.word == "crisp":
        return DRY
    if kind.flour == "rye":
        return RYE
    return LOAF if kind.loaf or kind.wrapped_warm else SMALL


def fit_after(want: Want, work: Work, noun: str, cools: Fraction, kitchen: Kitchen) -> Fraction:
    """Seconds from out of the oven until it is ready, cold enough to pack, or served; and as old as it is wanted at least."""
    young = (want.age.low if want.age is not None else None) or Fraction(0)
    if want.end.how is Finish.READY:
        fit = cools
    elif want.end.how is Finish.PACKED:
        said = next((seconds for held, seconds in kitchen.packs if same_noun(held, noun)), None)
        fit = (PACKS_LOAF if work.bread.loaf else PACKS_SMALL) if said is None else said
    else:
        fit = Fraction(0)
    return max(fit, young)
