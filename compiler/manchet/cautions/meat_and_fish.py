"""Raw meat and fish: through by the end of the last heat, or frozen first where there is none."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, Done, done_in, ways_done
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import HOUR, longest
from manchet.formula.model import Step
from manchet.larder.foods import raw_fish, raw_meat_or_fish
from manchet.syntax.vocabulary import COOKS

THROUGH = 75
"""Degrees Celsius in the middle: what is filled or wrapped counts as stuffed."""
NOT_RAW_FROM = 60
FROZEN = -20


def meat_through(work: Work) -> Iterator[Caution]:
    """At the last heat of each bread that has raw meat or fish in it by then."""
    weighed = any(raw_meat_or_fish(p.name) for stage in work.formula.stages for p in stage.portions)
    for done in ways_done(work.formula):
        last = max((n for n, (_, step) in enumerate(done) if step.verb in COOKS), default=None)
        if last is None:
            continue
        before = (step.applied.name for _, step in done[:last] if step.applied is not None)
        if weighed or any(map(raw_meat_or_fish, before)):
            at, step = done[last]
            yield caution("cook-meat-through", at, "note" if (_core(step) or 0) >= THROUGH else None)


def fish_never_cooked(work: Work) -> Iterator[Caution]:
    """Where it is weighed in, and never heated to 60 C in the middle; where it is laid on after the last heat."""
    for stage in work.formula.stages:
        if any(raw_fish(p.name) for p in stage.portions) and not _cooked(done_in(stage, work.formula)):
            frozen = any(_frozen(step) for step in stage.steps)
            yield caution("raw-fish", CautionPlace(stage.key, 0 if stage.steps else None), "note" if frozen else None)
    for done in ways_done(work.formula):
        last = max((n for n, (_, step) in enumerate(done) if step.verb in COOKS), default=-1)
        for at, step in done[last + 1 :]:
            if step.applied is not None and raw_fish(step.applied.name):
                yield caution("raw-fish", at)


def _core(step: Step) -> Fraction | None:
    return next((r.value.likely for r in step.reaches if r.what == "core"), None)


def _cooked(done: Sequence[Done]) -> bool:
    return any(step.verb in COOKS and (step.verb != "heat" or (_core(step) or 0) >= NOT_RAW_FROM) for _, step in done)


def _frozen(step: Step) -> bool:
    """-20 C in the middle, and a day of it: what only stands so cold says nothing of its middle."""
    core = _core(step)
    return step.verb == "freeze" and core is not None and core <= FROZEN and longest(step) >= 24 * HOUR
