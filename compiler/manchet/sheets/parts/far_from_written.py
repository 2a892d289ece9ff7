"""What a sheet says where today's amount is far from the one the file was written for."""

from __future__ import annotations

from manchet.batch.far_from_written import FarStep, step_far_from_written, too_small_to_cook
from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.sheets.page.measures import Measures


def far_stage_notes(stage: StageBatch, m: Measures) -> tuple[str, ...]:
    """At the head of a stage: it is too little to cook at all."""
    return (m.words.say("far.small", m.about(stage.into)),) if too_small_to_cook(stage) else ()


def far_step_notes(work: Work, verb: str, stage: StageBatch | None, noun: str, m: Measures) -> tuple[str, ...]:
    """At a step: what of it was written for another size. `stage` is None in the way of one sort, whose `noun` is given."""
    far = step_far_from_written(work, verb, stage, noun)
    return () if far is None else (far_line(far, m),)


def far_line(step: FarStep, m: Measures) -> str:
    """`written for 500 g pieces, these are 900 g: bake to the core, not the clock`"""
    what = step.what
    if what == "dough":
        what = "dough_larger" if step.far.wanted > step.far.written else "dough_smaller"
    return m.words.say("far." + what, m.about(step.far.written), m.about(step.far.wanted))
