"""What a formula takes that is made by another: its preparations."""

from __future__ import annotations

from manchet.formula.model import Formula


def made_elsewhere(formula: Formula) -> frozenset[str]:
    """The keys of preparations that go into it, touch it, or that its pieces are boiled in."""
    portions = [portion.stage for stage in formula.stages for portion in stage.portions]
    portions += [portion.stage for branch in formula.branches for portion in branch.added]
    steps = [key for step in formula.steps for key in (step.bath, step.applied.stage if step.applied else "")]
    return frozenset((*portions, *steps)) - {"", *(stage.key for stage in formula.stages)}
