"""What burns or crushes a hand in the work of one formula: hot paste, kettle, fat, sugar, lid, mixer."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, done_in
from manchet.cautions.caution import Caution, caution, celsius
from manchet.cautions.limits import figure
from manchet.cautions.vessel import vessels_of
from manchet.figures.water.mix_temperature import mix_temperature
from manchet.formula.model import Stage
from manchet.syntax.vocabulary import HOLDS_WATER, IN_FAT

SCALDS = 65
"""Degrees Celsius from which a paste or the water for it is handled as boiling."""


def hot_fat(work: Work) -> Iterator[Caution]:
    """With its own heat, where it keeps to the limit."""
    most = figure("fat-heat")
    for stage in work.formula.stages:
        for at, step in done_in(stage, work.formula):
            if step.verb in IN_FAT:
                heat = max((h.celsius.high or h.celsius.likely for h in step.heats), default=None)
                if heat is None or heat <= most:
                    own = {} if heat is None else {"heat": heat}
                    yield caution("hot-oil", at, "top", own, why=() if heat is None else ("it is at ", celsius(heat)))
                else:
                    yield caution(
                        "hot-oil", at, "top", why=("it is at ", celsius(heat), ", and the limit is ", celsius(most))
                    )


def hot_sugar(work: Work) -> Iterator[Caution]:
    """Half of it sugar, and hotter than water boils."""
    for vessel in vessels_of(work):
        if vessel.share("sweetener") < figure("sugar-from"):
            continue
        for leg in vessel.legs:
            if leg.heats and leg.end.high is not None and leg.end.high >= figure("sugar-boils-from"):
                yield caution(
                    "hot-sugar", leg.at, "top", {"heat": leg.end.high}, ("it comes to ", celsius(leg.end.high))
                )


def burns_of_the_house(work: Work) -> Iterator[Caution]:
    """Hot paste, kettle, steamer and lid: on the posted card, and in a handout at their step."""
    formula = work.formula
    for stage in formula.stages:
        living = stage is formula.dough and not formula.preparation
        hot = [p for p in stage.portions if p.celsius is not None and p.ingredient is not None and p.celsius >= SCALDS]
        if stage.word in HOLDS_WATER and (hot or mix_temperature(work, stage) >= SCALDS):
            yield caution("scald-burns", _where_poured(stage, {p.key for p in hot if p.held}))
        for at, step in done_in(stage, formula):
            if step.verb == "boil" and living:
                yield caution("kettle-burns", at)
            if step.verb == "steam":
                yield caution("steamer-burns", at)
            if step.verb == "bake" and step.lid:
                yield caution("hot-lid", at)


def hands_in_the_mixer(work: Work) -> Iterator[Caution]:
    """A mix whose words send a hand or a scraper into the bowl."""
    for stage in work.formula.stages:
        for number, step in enumerate(stage.steps):
            said = " ".join((step.how, step.until, step.why, *step.notes)).casefold()
            by_machine = step.verb == "mix" and "by hand" not in step.manner
            if by_machine and any(w in said for w in ("scrape", "reach in", "feel")):
                yield caution("stop-the-mixer", CautionPlace(stage.key, number))


def _where_poured(stage: Stage, held: set[str]) -> CautionPlace:
    """The step that adds what is hot; its first step, where that stands in the bowl from the start."""
    adds = (n for n, step in enumerate(stage.steps) if any(goes.key in held for goes in step.goes))
    return CautionPlace(stage.key, next(adds, 0 if stage.steps else None))
