"""What is in a stage, and how long and how hot its steps are: what several hazards ask."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from manchet.cautions.at import CautionPlace, Done
from manchet.formula.model import Stage, Step
from manchet.larder.ingredient import Ingredient

HOUR = 3600
ROOM = Fraction(20)
"""What stands where nothing is said stands in a room, degrees Celsius."""


def weight(stage: Stage) -> Fraction:
    """All that is weighed into it, in grams per gram of all flour."""
    return sum((p.share for p in stage.portions), Fraction(0))


def class_share(stage: Stage, *classes: str) -> Fraction:
    """What is weighed into it of these classes, in grams per gram of all flour."""
    return sum((p.share for p in stage.portions if p.ingredient and p.ingredient.class_ in classes), Fraction(0))


def ingredients(stage: Stage, *classes: str) -> list[Ingredient]:
    return [p.ingredient for p in stage.portions if p.ingredient is not None and p.ingredient.class_ in classes]


def longest(step: Step) -> Fraction:
    """Seconds it takes at most; 0 where it does not say."""
    if step.time is None:
        return Fraction(0)
    return step.time.high if step.time.high is not None else step.time.likely


def degrees_reached(step: Step) -> Fraction | None:
    """Degrees Celsius that the thing itself, or its middle, reaches."""
    return next((r.value.likely for r in step.reaches if r.what in ("temperature", "core")), None)


def around(step: Step) -> Fraction:
    """Degrees Celsius around it: those of a room, where it does not say."""
    return step.heats[0].celsius.likely if step.heats else ROOM


def first_of(done: Sequence[Done], verbs: Iterable[str]) -> CautionPlace | None:
    """Where the first step of these verbs stands."""
    return next((at for at, step in done if step.verb in verbs), None)


def end_of(stage: Stage) -> CautionPlace:
    """The last step of a stage, after which it is kept; the stage as a whole where it has no steps."""
    return CautionPlace(stage.key, len(stage.steps) - 1 if stage.steps else None)
