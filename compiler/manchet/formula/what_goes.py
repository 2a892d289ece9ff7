"""What a loss is a loss of: water that goes off, liquid with what is dissolved in it, or the stuff as it is."""

from __future__ import annotations

from enum import Enum

from manchet.formula.step import Step, Who
from manchet.syntax.vocabulary import COOKS, COOLS_BREAD, POURS_OFF


class LossOf(Enum):
    WATER = "water, as steam or into the air"
    LIQUID = "liquid, with what is dissolved in it"
    STUFF = "the stuff as it is"


def loss_of(step: Step, hot: bool = False) -> LossOf:
    """What a step that loses something loses. `hot`: its stage is made with hot water, so that what it loses is steam."""
    if hot or step.verb in COOKS or (step.who is Who.WAITING and step.verb in COOLS_BREAD):
        return LossOf.WATER
    return LossOf.LIQUID if step.verb in POURS_OFF else LossOf.STUFF
