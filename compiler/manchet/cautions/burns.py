"""What burns or crushes a hand in the work of one formula: hot paste, kettle, fat, sugar, lid, mixer."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import class_share, degrees_reached, weight
from manchet.figures.water.mix_temperature import mix_temperature
from manchet.formula.model import Stage
from manchet.syntax.vocabulary import HOLDS_WATER

SCALDS = 65
"""Degrees Celsius from which a paste or the water for it is handled as boiling."""


def burns_met(work: Work, stage: Stage) -> Iterator[Caution]:
    living = stage is work.formula.dough and not work.formula.preparation
    hot = [p for p in stage.portions if p.celsius is not None and p.ingredient is not None and p.celsius >= SCALDS]
    if stage.word in HOLDS_WATER and (hot or mix_temperature(work, stage) >= SCALDS):
        yield caution("scald-burns", _where_poured(stage, {p.key for p in hot if p.held}))
    whole = weight(stage)
    sugary = whole and class_share(stage, "sweetener") / whole >= Fraction(1, 2)
    for at, step in done_in(stage, work.formula):
        if step.verb == "fry":
            yield caution("hot-oil", at)
        if step.verb == "boil" and living:
            yield caution("kettle-burns", at)
        if step.verb == "steam":
            yield caution("steamer-burns", at)
        if step.verb == "bake" and step.lid:
            yield caution("hot-lid", at)
        if sugary and (degrees_reached(step) or 0) >= 110:
            yield caution("hot-sugar", at)


def hands_in_the_mixer(stage: Stage) -> Iterator[Caution]:
    """A mix whose words send a hand or a scraper into the bowl."""
    for number, step in enumerate(stage.steps):
        said = " ".join((step.how, step.until, step.why, *step.notes)).casefold()
        by_machine = step.verb == "mix" and "by hand" not in step.manner
        if by_machine and any(w in said for w in ("scrape", "reach in", "feel")):
            yield caution("stop-the-mixer", CautionPlace(stage.key, number))


def _where_poured(stage: Stage, held: set[str]) -> CautionPlace:
    """The step that adds what is hot; its first step, where that stands in the bowl from the start."""
    adds = (n for n, step in enumerate(stage.steps) if any(goes.key in held for goes in step.goes))
    return CautionPlace(stage.key, next(adds, 0 if stage.steps else None))
