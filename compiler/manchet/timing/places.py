"""Where a step is done: which oven, which mixer; and when an oven must be lit."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.formula.model import Step, Work
from manchet.larder.kitchen import Kitchen, Mixer, Oven
from manchet.timing.network import Job

IN_OVEN = frozenset({"bake", "roast"})


class Firing(NamedTuple):
    """An oven is lit at `start` to be hot at `end`, when `step` needs it. Seconds."""

    oven: Oven
    step: Step
    start: Fraction
    end: Fraction


def oven_of(step: Step, kitchen: Kitchen) -> Oven | None:
    """The oven a bake or roast names (`bake 20 min in mother`), else the first of the kitchen; None for other steps."""
    if step.verb not in IN_OVEN:
        return None
    return next((oven for oven in kitchen.ovens if _names(step, oven.name)), next(iter(kitchen.ovens), None))


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
    """One firing for each oven that is used and says how long it takes to heat: to be hot for its first bake."""
    first: dict[str, tuple[Oven, int]] = {}
    for at, job in enumerate(jobs):
        oven = oven_of(job.step, kitchen)
        if oven is not None and (oven.name not in first or starts[at] < starts[first[oven.name][1]]):
            first[oven.name] = (oven, at)
    return tuple(
        Firing(oven, jobs[at].step, starts[at] - oven.heats_in, starts[at])
        for oven, at in first.values()
        if oven.heats_in is not None
    )
