"""The preparations that go into a bread or touch it."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.formula.model import Formula


def made_with(formula: Formula) -> tuple[str, ...]:
    """Their keys, in the order of the file."""
    return tuple(dict.fromkeys(key for key in _keys(formula) if key and formula.stage(key) is None))


def _keys(formula: Formula) -> Iterator[str]:
    for stage in formula.stages:
        yield from (portion.stage for portion in stage.portions)
    for branch in formula.branches:
        yield from (portion.stage for portion in branch.added)
    for step in formula.steps:
        if step.applied is not None:
            yield step.applied.stage
        yield step.bath
