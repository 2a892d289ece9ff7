"""Where a step is done: which oven, which mixer; and when an oven must be lit."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.figures.oven_curve import oven_of
from manchet.formula.model import Step, Work
from manchet.larder.kitchen import Kitchen, Mixer, Oven
from manchet.timing.network import Job

COLD_AFTER = Fraction(4 * 3600)
"""Seconds without a bake after which nobody counts on the oven's heat. Our own rule."""


class Firing(NamedTuple):
    """An oven is lit at `start` to be hot at `end`, when `step` needs it. Seconds."""

    oven: Oven
    step: Step
    start: Fraction
    end: Fraction


def mixer_of(step: Step, kitchen: Kitchen) -> Mixer | None:
    """The mixer a machine's mix names, else the only one of the kitchen."""
    if step.verb != "mix" or step.work is not Work.MACHINE:
        return None
    named = next((mixer for mixer in kitchen.mixers if _names(step, mixer.name)), None)
    return named or (kitchen.mixers[0] if len(kitchen.mixers) == 1 else None)


def _names(step: Step, thing: str) -> bool:
    return step.where is not None and thing.casefold() in step.where[1].casefold()


def place_of(step: Step, kitchen: Kitchen) -> str:
    """The place as written, else the oven or the mixer that follows from the kitchen, else ""."""
    if step.where is not None:
        return step.where[1]
    thing = oven_of(step, kitchen) or mixer_of(step, kitchen)
    return thing.name if thing is not None else ""


def firings_of(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], kitchen: Kitchen) -> tuple[Firing, ...]:
    """When each oven that says how long it takes to heat must be lit: to be hot for its first bake.

    It is lit anew for a bake before which it stood idle for `COLD_AFTER` or longer than it takes to heat.
    """
    found: list[Firing] = []
    for oven in kitchen.ovens:
        uses = sorted(
            (start, start + job.length.planned, at)
            for at, (start, job) in enumerate(zip(starts, jobs, strict=True))
            if oven_of(job.step, kitchen) == oven
        )
        hot_until: Fraction | None = None
        for start, end, at in uses:
            if oven.heats_in is None:
                break
            if hot_until is None or start - hot_until >= max(COLD_AFTER, oven.heats_in):
                found.append(Firing(oven, jobs[at].step, start - oven.heats_in, start))
            hot_until = end if hot_until is None else max(hot_until, end)
    return tuple(found)
