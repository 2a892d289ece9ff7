"""Preparations of egg, milk, vegetables or starch that are cooked, cooled and kept."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import HOUR, degrees_reached, end_of, first_of, ingredients, longest
from manchet.formula.model import Stage
from manchet.syntax.vocabulary import BOILS, COOKS, COOLS

COOLING = COOLS - {"freeze"}
"""How fast a freezer cools is not judged."""


def cooked_and_kept(work: Work, stage: Stage) -> Iterator[Caution]:
    """A dough or a scald is baked later, and is not asked."""
    perishable = ingredients(stage, "egg", "dairy", "vegetable", "starch")
    if not work.formula.preparation or not perishable:
        return
    done = done_in(stage, work.formula)
    heats = [(at, step) for at, step in done if step.verb in COOKS]
    if any(i.class_ == "egg" for i in perishable):
        tops = [t for t in (degrees_reached(step) for _, step in heats) if t is not None]
        boils = any(step.verb in BOILS for _, step in heats)
        if heats and not boils and (not tops or max(tops) < 71):
            yield caution("cook-egg-through", heats[-1][0])
        elif not heats:
            yield caution("raw-egg-kept", end_of(stage))
    cools = first_of(done, COOLING)
    if heats and (work.formula.good_for is not None or cools is not None):
        yield caution("cool-it-fast", cools or end_of(stage), None if _slow_cooling(stage) else "note")


def _slow_cooling(stage: Stage) -> bool:
    """Whether the steps as written break 21 C in 2 h or 5 C in 6 h; a cooling that names no end does."""
    taken = Fraction(0)
    warm_until = cold_until = None
    for step in stage.steps:
        if step.verb not in COOLING:
            continue
        taken += longest(step)
        end = degrees_reached(step)
        if end is None and step.verb == "chill" and step.heats:
            end = step.heats[0].celsius.likely
        if end is not None and end <= 21 and warm_until is None:
            warm_until = taken
        if end is not None and end <= 5 and cold_until is None:
            cold_until = taken
    return warm_until is None or cold_until is None or warm_until > 2 * HOUR or cold_until > 6 * HOUR
