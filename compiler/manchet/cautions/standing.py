"""Cooked flour that stands warm, raw grain that soaks warm."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import HOUR, around, class_share, ingredients, longest
from manchet.cautions.hazard import Level
from manchet.formula.model import Stage
from manchet.syntax.vocabulary import COOKS, STANDS

COLD = 5
"""Degrees Celsius."""
SOURING = frozenset({"culture"})


def standing_warm(work: Work, stage: Stage) -> Iterator[Caution]:
    """Baked later, it is a note."""
    if ingredients(stage, *SOURING, "yeast", "sweet-dough yeast") or any(p.stage for p in stage.portions):
        return
    cooked = work.formula.preparation or any(step.verb in COOKS for step in work.formula.steps)
    level: Level | None = None if work.formula.preparation else "note"
    stands = [(at, step) for at, step in done_in(stage, work.formula) if step.verb in STANDS]
    if stage.word == "scald":
        warm = [(at, longest(step)) for at, step in stands if COLD < around(step) < 60]
        if sum((time for _, time in warm), Fraction(0)) > 2 * HOUR:
            yield caution("warm-and-wet", warm[0][0], level)
        return
    water, salt = class_share(stage, "water", "liquid", "dairy"), class_share(stage, "salt")
    raw = ingredients(stage, "grain", "seed", "wheat flour", "rye flour", "other flour")
    if not raw or not water or salt >= water / 10:
        return
    for at, step in stands:
        if around(step) > COLD and longest(step) >= (12 if cooked else 4) * HOUR:
            yield caution("warm-soak", at, level)
