"""What a work takes of its cultures beyond what it gives back: by so much the pot must be fed."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.scales import reading_of
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class CultureUse(NamedTuple):
    """Of one culture, in exact grams."""

    name: str
    """As the file calls it where it is taken first."""
    taken: Fraction
    back: Fraction
    """Kept for next time, or given back to its pot."""
    short: Fraction
    """0 where it is less than the scale shows on which the culture is weighed."""


def cultures_used(work: Work) -> dict[str, CultureUse]:
    """Each culture that is weighed in, by its key, in working order."""
    taken: dict[str, tuple[str, Fraction]] = {}
    back: dict[str, Fraction] = {}
    for batch in work.batch.stages:
        for line in batch.weighed:
            portion = line.portion
            if portion.ingredient is not None and portion.ingredient.class_ == "culture":
                name, grams = taken.get(portion.key, (portion.name, NOTHING))
                taken[portion.key] = (name, grams + line.grams)
        for name, grams in (*batch.kept, *batch.returned):
            back[fold(name)] = back.get(fold(name), NOTHING) + grams
    return {key: _use(name, grams, back.get(key, NOTHING), work) for key, (name, grams) in taken.items()}


def _use(name: str, taken: Fraction, back: Fraction, work: Work) -> CultureUse:
    short = taken - back
    return CultureUse(name, taken, back, NOTHING if short < reading_of(taken, work.kitchen).step else short)
