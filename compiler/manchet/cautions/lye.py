"""Lye: where it is mixed, again where a piece or a hand meets the bath, and where it is kept."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, done_in, where_kept
from manchet.cautions.caution import Caution, caution
from manchet.cautions.limits import figure
from manchet.cautions.phrase import Measured
from manchet.cautions.vessel import vessels_of
from manchet.figures.composition.lye import Bath, bath_of, lye_in, strength_of
from manchet.formula.model import Stage

HUNDRED = 100


def lye_met(work: Work) -> Iterator[Caution]:
    """Dry lye and canister lye burn however weak the bath; at the dip it is the bath that hands meet."""
    formula = work.formula
    for vessel in vessels_of(work):
        lyes = (p.name for p in vessel.stage.portions if lye_in(p.ingredient) >= figure("lye-burns-from"))
        for name in [*lyes][:1]:
            yield caution("lye-mixing", _where_mixed(vessel.stage), "top", why=(f"{name} goes into water",))
        strength = strength_of(vessel.stage)
        if strength > figure("lye-bath"):
            yield caution("lye-too-strong", vessel.end, "top", why=_of(strength))
        if strength >= figure("lye-irritates-from") and formula.good_for is not None:
            own = {"lye": strength * HUNDRED}
            yield caution("lye-kept", where_kept(formula), "warning", own, _of(strength))
    for stage in formula.stages:
        for at, step in done_in(stage, formula):
            bath = bath_of(step, work)
            if bath is not None:
                yield from _at_the_bath(bath, at)


def _at_the_bath(bath: Bath, at: CautionPlace) -> Iterator[Caution]:
    """With its own per cent; a bath whose strength nobody knows burns like a usual one."""
    if bath.strength is None:
        yield caution("lye-corrosive", at, "top", why=("nothing says how strong it is",))
        return
    own, why = {"lye": bath.strength * HUNDRED}, _of(bath.strength)
    if bath.strength > figure("lye-bath"):
        yield caution("lye-too-strong", at, "top", why=why)
    if bath.strength >= figure("lye-burns-from"):
        yield caution("lye-corrosive", at, "top", own, why)
    elif bath.strength >= figure("lye-irritates-from"):
        yield caution("lye-irritant", at, "warning", own, why)


def _of(strength: Fraction) -> tuple[str | Measured, ...]:
    return (Measured("percent", strength * HUNDRED), " lye")


def _where_mixed(stage: Stage) -> CautionPlace:
    """The step that adds the lye; the stage as a whole, where it is weighed in with the rest."""
    keys = {p.key for p in stage.portions if lye_in(p.ingredient) and p.held}
    adds = (n for n, step in enumerate(stage.steps) if any(goes.key in keys for goes in step.goes))
    return CautionPlace(stage.key, next(adds, None))
