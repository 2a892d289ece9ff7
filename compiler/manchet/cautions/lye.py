"""Lye: where it is mixed, and again where a piece or a hand meets the bath."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import weight
from manchet.figures.composition.lye import lye_in
from manchet.formula.model import Stage

CORROSIVE, IRRITANT = Fraction(2, 100), Fraction(5, 1000)


def lye_met(work: Work, stage: Stage) -> Iterator[Caution]:
    whole = weight(stage)
    strength = sum((lye_in(p.ingredient) * p.share for p in stage.portions), Fraction(0)) / whole if whole else 0
    if strength >= CORROSIVE:
        yield caution("lye-corrosive", _where_mixed(stage))
    elif strength >= IRRITANT:
        yield caution("lye-irritant", _where_mixed(stage))
    for at, step in done_in(stage, work.formula):
        applied = step.applied
        if applied is None:
            continue
        if (applied.ingredient is not None and applied.ingredient.class_ == "lye") or "lye" in applied.name.split():
            yield caution("lye-corrosive", at)


def _where_mixed(stage: Stage) -> CautionPlace:
    """The step that adds the lye; the stage as a whole, where it is weighed in with the rest."""
    keys = {p.key for p in stage.portions if lye_in(p.ingredient) and p.held}
    adds = (n for n, step in enumerate(stage.steps) if any(goes.key in keys for goes in step.goes))
    return CautionPlace(stage.key, next(adds, None))
