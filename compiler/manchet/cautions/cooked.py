"""Preparations of egg, milk, vegetables or starch: cooked through, cooled fast, kept cold or hot, heated again."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import Done, done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import HOUR, ROOM, around, degrees_reached, end_of, first_of, ingredients, longest
from manchet.formula.model import Formula, Stage
from manchet.larder.foods import is_pasteurised
from manchet.syntax.vocabulary import BOILS, COOKS, COOLS, IN_POT

COOLING = COOLS - {"freeze"}
"""How fast a freezer cools is not judged."""
COLD, HOT = 5, 63
"""Degrees Celsius: what is kept is no warmer than the first, or no cooler than the second."""
EGG_AT_ONCE, EGG_HELD, HELD = 75, 71, 120
"""Degrees Celsius at which egg is cooked at once, and held; and for how many seconds it is then held."""
REHEATED = 75


def cooked_and_kept(work: Work, stage: Stage) -> Iterator[Caution]:
    """A dough or a scald is baked later, and is not asked."""
    perishable = ingredients(stage, "egg", "dairy", "vegetable", "starch")
    formula = work.formula
    if not formula.preparation or not perishable:
        return
    done = done_in(stage, formula)
    heats = [one for one in done if one.step.verb in COOKS]
    raw_egg = [i for i in perishable if i.class_ == "egg" and not is_pasteurised(i.name)]
    if raw_egg and heats and not _egg_cooked(heats):
        yield caution("cook-egg-through", heats[-1].at)
    elif raw_egg and not heats:
        yield caution("raw-egg-kept", end_of(stage), None if _a_day_cold(formula) else "warning")
    elif _between(formula) and (heats or any(i.class_ == "dairy" for i in perishable)):
        yield caution("neither-cold-nor-hot", end_of(stage))
    cools = first_of(done, COOLING)
    kept = formula.good_for is not None and _kept_at(formula) < HOT
    if heats and (kept or cools is not None):
        yield caution("cool-it-fast", cools or end_of(stage), None if _slow_cooling(stage) else "note")
    yield from _heated_again(done)


def _egg_cooked(heats: Sequence[Done]) -> bool:
    """Boiled, 75 C in the middle, or 71 C held for two minutes."""
    held = any(
        step.heats and around(step) >= EGG_HELD and longest(step) >= HELD for _, step in heats if step.verb in IN_POT
    )
    tops = [t for t in (degrees_reached(step) for _, step in heats) if t is not None]
    top = max(tops, default=Fraction(0))
    return held or any(step.verb in BOILS for _, step in heats) or top >= EGG_AT_ONCE


def _kept_at(formula: Formula) -> Fraction:
    """Degrees Celsius, the warmest it may stand at: those of a room, where the file does not say."""
    at = formula.good_for.celsius if formula.good_for is not None else None
    if at is None:
        return ROOM
    return at.high if at.high is not None else at.likely


def _between(formula: Formula) -> bool:
    return formula.good_for is not None and COLD < _kept_at(formula) < HOT


def _a_day_cold(formula: Formula) -> bool:
    return formula.good_for is not None and formula.good_for.seconds <= 24 * HOUR and _kept_at(formula) <= COLD


def _heated_again(done: Sequence[Done]) -> Iterator[Caution]:
    """What was cooked and cooled, and is heated once more in a pot."""
    cooked = cooled = False
    for at, step in done:
        if cooled and step.verb in IN_POT:
            quick = 0 < longest(step) <= 2 * HOUR
            through = (degrees_reached(step) or 0) >= REHEATED or step.verb in BOILS
            yield caution("reheat-through", at, "note" if quick and through else None)
        cooled = cooled or (cooked and step.verb in COOLING)
        cooked = cooked or step.verb in COOKS


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
