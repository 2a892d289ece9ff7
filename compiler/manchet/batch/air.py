"""The air of the place that a step names: what the kitchen says of it holds for the step, where that says nothing else."""

from __future__ import annotations

from manchet.formula.model import Formula, Range, Step
from manchet.kitchen.model import Kitchen


def in_its_air(formula: Formula, kitchen: Kitchen) -> Formula:
    """The formula with the humidity of each prover that a step stands in."""
    if all(cold.humidity is None for cold in kitchen.colds) or all(step.where is None for step in formula.steps):
        return formula
    stages = tuple(stage._replace(steps=_all(stage.steps, kitchen)) for stage in formula.stages)
    branches = tuple(branch._replace(steps=_all(branch.steps, kitchen)) for branch in formula.branches)
    return formula._replace(stages=stages, branches=branches)


def _all(steps: tuple[Step, ...], kitchen: Kitchen) -> tuple[Step, ...]:
    return tuple(_one(step, kitchen) for step in steps)


def _one(step: Step, kitchen: Kitchen) -> Step:
    place = None if step.where is None or step.humidity is not None else kitchen.cold(step.where[1])
    if place is None or place.humidity is None:
        return step
    return step._replace(humidity=Range(place.humidity, place.humidity))
