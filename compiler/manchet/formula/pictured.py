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
    yield from (picture for step in formula.steps for picture in step.pictures)
