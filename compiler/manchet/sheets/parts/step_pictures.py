"""The pictures of steps: the baker's own; where there is none, ours. The handout has them beside, the prep sheet below."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from manchet.batch.work import Work
from manchet.figures.losses.level import Stands, dough_levels
from manchet.formula.model import Step
from manchet.sheets.drawings.choosing import bake_curve, drawings_of
from manchet.sheets.drawings.pen import Drawing
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.views import Illustration


def step_illustrations(
    steps: Sequence[Step], noun: str, after: Sequence[Step], work: Work, pictures: Pictures, m: Measures
) -> tuple[tuple[Illustration, ...], ...]:
    """For each step of one way its pictures, without captions; a bake has its baker's own alone.

    `noun`: of the pieces that go this way, "" for all; `after`: steps that follow in the ways of the sorts.
    """
    if pictures is None:
        return ((),) * len(steps)
    stands = dough_levels(steps, noun, work.batch.pieces, work.kitchen)
    return tuple(
        own_illustrations(step.pictures, pictures) or _ours(step, stands[at], (*steps[at + 1 :], *after), m)
        for at, step in enumerate(steps)
    )


def _ours(step: Step, stands: Stands, after: Sequence[Step], m: Measures) -> tuple[Illustration, ...]:
    return illustrations(drawings_of(step, m, stands, after))


def illustrations(drawn: Iterable[Drawing | None]) -> tuple[Illustration, ...]:
    return tuple(Illustration(one.title, one.svg, high=one.high) for one in drawn if one is not None)


def bake_illustration(phases: Sequence[Step], pictures: Pictures, m: Measures) -> tuple[Illustration, ...]:
    """The heat of a bake over its minutes, where a table does not say it as well."""
    return () if pictures is None else illustrations((bake_curve(phases, m),))
