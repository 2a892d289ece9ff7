"""The baked bread: rope in warm weather, and what is wrapped or sliced before it is cold."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, ways_done
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import longest
from manchet.syntax.vocabulary import COOLS_BREAD, WRAPS


def rope_in_warm_weather(work: Work) -> Iterator[Caution]:
    """Only where the kitchen is warm, and nothing sours the bread."""
    air, totals = work.kitchen.air, work.totals
    if air is None or air < 25 or totals.cultures or work.formula.preparation:
        return
    share = totals.by_class
    whole = sum((line.share for line in work.formula.overall if "whole" in line.name.casefold()), Fraction(0))
    rough = share.get("grain", Fraction(0)) + share.get("seed", Fraction(0)) + whole
    scald = any(s.word == "scald" for s in work.formula.stages)
    sour = any("vinegar" in line.name or "propionate" in line.name for line in work.formula.overall)
    if not sour and (scald or share.get("bread") or rough > Fraction(20, 100)):
        yield caution("rope-weather", _where_cooled(work))


def _where_cooled(work: Work) -> CautionPlace:
    """The first step after the bake that cools it; the dough as a whole where none does."""
    for done in ways_done(work.formula):
        baked = max((n for n, (_, step) in enumerate(done) if step.verb == "bake"), default=len(done))
        for at, step in done[baked + 1 :]:
            if step.verb in COOLS_BREAD:
                return at
    return CautionPlace(work.formula.dough.key)


def wrapped_warm(work: Work) -> Iterator[Caution]:
    """Slicing, or wrapping in something that holds steam, sooner than the middle can have cooled."""
    if work.bread.wrapped_warm or work.formula.preparation:
        return
    for done in ways_done(work.formula):
        baked = max((n for n, (_, step) in enumerate(done) if step.verb == "bake"), default=None)
        if baked is None:
            continue
        cooled = Fraction(0)
        for at, step in done[baked + 1 :]:
            if step.verb == "cool":
                cooled += longest(step)
            tight = step.where is not None and any(w in step.where[1] for w in ("film", "bag", "plastic", "foil"))
            if (step.verb == "slice" or (step.verb in WRAPS and tight)) and cooled < 90 * 60:
                yield caution("wrapped-warm", at)
