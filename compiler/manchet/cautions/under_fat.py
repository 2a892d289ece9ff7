"""Plants under oil or in butter, where no air comes to them."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import HOUR, class_share, end_of, first_of, longest, weight
from manchet.formula.model import Stage
from manchet.larder.foods import grows_wet
from manchet.syntax.vocabulary import STANDS, WRAPS

FAT_CONTINUOUS = Fraction(30, 100)
SOUR_ENOUGH = Fraction(42, 10)
"""The pH, measured in the pieces, from which down the caution is only a limit: it is never silent."""


def plants_under_fat(work: Work, stage: Stage) -> Iterator[Caution]:
    """Above the step that packs them; without one, that after which they are kept."""
    whole = weight(stage)
    if not whole or class_share(stage, "fat") / whole < FAT_CONTINUOUS or any(p.is_flour for p in stage.portions):
        return
    soaked = class_share(stage, "water", "liquid") > 0
    if not any(p.ingredient is not None and grows_wet(p.ingredient, p.name, soaked) for p in stage.portions):
        return
    done = done_in(stage, work.formula)
    waits = (at for at, s in done if s.may_wait or (s.verb in STANDS and longest(s) > 2 * HOUR))
    waiting = next(waits, None)
    kept = work.formula.preparation and work.formula.good_for is not None
    if not kept and waiting is None:
        yield caution("plants-in-fat-today", end_of(stage))
        return
    at = first_of(done, WRAPS) or waiting or end_of(stage)
    if _soured(stage):
        yield caution("plants-under-fat", at, "note")._replace(again=True)
    else:
        yield caution("plants-under-fat", at)


def _soured(stage: Stage) -> bool:
    sour = [r.value for step in stage.steps for r in step.reaches if r.what == "pH"]
    return any(value.high is not None and value.high <= SOUR_ENOUGH for value in sour)
