"""The pictures that a formula names: in its head, its stages and its steps."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.formula.model import Formula
from manchet.formula.picture import Picture


def pictures_named(formula: Formula) -> Iterator[Picture]:
    """In the order of the formula; one that several steps draw on (of a stage of the house) more than once."""
    yield from formula.pictures
    for stage in formula.stages:
        yield from stage.pictures
    ways = [stage.steps for stage in formula.stages] + [branch.steps for branch in formula.branches]
    yield from (picture for steps in ways for step in steps for picture in step.pictures)
