"""Lye: where it is mixed, again where a piece or a hand meets the bath, and where it is kept."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import end_of, weight
from manchet.figures.composition.lye import lye_in
from manchet.formula.model import Applied, Formula, Stage

IRRITANT, CORROSIVE, TOO_STRONG = Fraction(5, 1000), Fraction(2, 100), Fraction(6, 100)
"""Shares of lye by weight: from the first it irritates, from the second it burns; over the third nothing is dipped."""


def lye_met(work: Work, stage: Stage) -> Iterator[Caution]:
    """Dry lye and canister lye burn however weak the bath; at the dip it is the bath that hands meet."""
    if any(lye_in(p.ingredient) >= CORROSIVE for p in stage.portions):
        yield caution("lye-mixing", _where_mixed(stage))
    strength = _strength(stage)
    if strength > TOO_STRONG:
        yield caution("lye-too-strong", end_of(stage))
    if strength >= IRRITANT and work.formula.good_for is not None:
        yield caution("lye-kept", end_of(stage))
    for at, step in done_in(stage, work.formula):
        if step.bath and "lye" in step.bath.split():
            yield from (caution(name, at) for name in _of_bath(CORROSIVE))
        if step.applied is not None:
            yield from (caution(name, at) for name in _of_bath(_bath(step.applied, work.formula)))


def _of_bath(strength: Fraction) -> Iterator[str]:
    if strength > TOO_STRONG:
        yield "lye-too-strong"
    if strength >= CORROSIVE:
        yield "lye-corrosive"
    elif strength >= IRRITANT:
        yield "lye-irritant"


def _strength(stage: Stage) -> Fraction:
    whole = weight(stage)
    return sum((lye_in(p.ingredient) * p.share for p in stage.portions), Fraction(0)) / whole if whole else Fraction(0)


def _bath(applied: Applied, formula: Formula) -> Fraction:
    """How strong a bath is that touches the bread: one of another file, and lye of no given strength, count as a usual one."""
    stage = formula.stage(applied.stage)
    if stage is not None:
        return _strength(stage)
    named = "lye" in applied.name.casefold().split()
    if applied.ingredient is None:
        return CORROSIVE if named else Fraction(0)
    strength = lye_in(applied.ingredient)
    return CORROSIVE if strength == 1 else strength


def _where_mixed(stage: Stage) -> CautionPlace:
    """The step that adds the lye; the stage as a whole, where it is weighed in with the rest."""
    keys = {p.key for p in stage.portions if lye_in(p.ingredient) and p.held}
    adds = (n for n, step in enumerate(stage.steps) if any(goes.key in keys for goes in step.goes))
    return CautionPlace(stage.key, next(adds, None))
