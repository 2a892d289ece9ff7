"""What a sheet says where today's amount is far from the one the file was written for."""

from __future__ import annotations

from manchet.formula.model import Batch, StageBatch
from manchet.formula.written_for import COOKED, Far, far_mass, far_piece, too_small_to_cook
from manchet.larder.kitchen import Kitchen
from manchet.sheets.measures import Measures

PROVING = frozenset({"prove", "retard"})
HEATING = frozenset({"bake", "griddle", "fry", "roast"})


def stage_notes(stage: StageBatch, m: Measures) -> tuple[str, ...]:
    """At the head of a stage: it is too little to cook at all."""
    return (m.words.say("far.small", m.about(stage.into)),) if too_small_to_cook(stage) else ()


def step_notes(
    verb: str, batch: Batch, stage: StageBatch | None, kitchen: Kitchen, noun: str, m: Measures
) -> tuple[str, ...]:
    """At a step: the bake and the proof of a piece of another weight, the fermentation or the pot of another mass.

    `stage` is None in the way of one sort of piece, whose `noun` is given.
    """
    if verb in HEATING or verb in PROVING:
        phrase = "far.bake" if verb in HEATING else "far.prove"
        return _said(phrase, far_piece(batch, kitchen, noun), m)
    if stage is not None and verb == "ferment":
        return _said("far.dough", far_mass(batch, stage), m)
    if stage is not None and verb in COOKED:
        return _said("far.pot", far_mass(batch, stage), m)
    return ()


def _said(phrase: str, far: Far | None, m: Measures) -> tuple[str, ...]:
    return () if far is None else (m.words.say(phrase, m.about(far.written), m.about(far.wanted)),)
