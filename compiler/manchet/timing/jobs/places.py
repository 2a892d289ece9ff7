"""Where a step is done: which oven, which mixer."""

from __future__ import annotations

from manchet.figures.oven.curve import oven_of
from manchet.formula.model import Step, Who
from manchet.kitchen.model import Kitchen, Mixer


def mixer_of(step: Step, kitchen: Kitchen) -> Mixer | None:
    """The mixer a machine's mix names, else the only one of the kitchen."""
    if step.verb != "mix" or step.who is not Who.MACHINE:
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
