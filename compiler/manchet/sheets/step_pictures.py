"""The pictures of steps: the baker's own; where there is none, ours. The handout has them beside, the prep sheet below."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from manchet.batch.work import Work
from manchet.figures.losses.level import Stands, standing
from manchet.formula.model import Step
from manchet.sheets.drawings.choosing import bake_curve, drawings_of
from manchet.sheets.drawings.pen import Drawing
from manchet.sheets.measures import Measures
from manchet.sheets.own_pictures import Pictures, own
from manchet.sheets.views import Block, Figure, Figures, Part, Steps

LINE = 11
"""Millimetres of a step's line on the prep sheet, with its box."""


def pictures_of_steps(
    steps: Sequence[Step], noun: str, after: Sequence[Step], work: Work, pictures: Pictures, m: Measures
) -> tuple[tuple[Figure, ...], ...]:
    """For each step of one way its pictures, without captions; a bake has its baker's own alone.

    `noun`: of the pieces that go this way, "" for all; `after`: steps that follow in the ways of the sorts.
    """
    if pictures is None:
        return ((),) * len(steps)
    stands = standing(steps, noun, work.batch.pieces, work.kitchen)
    return tuple(
        own(step.pictures, pictures) or _ours(step, stands[at], (*steps[at + 1 :], *after), m)
        for at, step in enumerate(steps)
    )


def _ours(step: Step, stands: Stands, after: Sequence[Step], m: Measures) -> tuple[Figure, ...]:
    return figures(drawings_of(step, m, stands, after))


def figures(drawn: Iterable[Drawing | None]) -> tuple[Figure, ...]:
    return tuple(Figure(one.title, one.svg, high=one.high) for one in drawn if one is not None)


def curve_of(phases: Sequence[Step], pictures: Pictures, m: Measures) -> tuple[Figure, ...]:
    """The heat of a bake over its minutes, where a table does not say it as well."""
    return () if pictures is None else figures((bake_curve(phases, m),))


def spans(pictures: Sequence[tuple[Figure, ...]], line: int) -> tuple[int, ...]:
    """Beside how many lines the pictures of each line stand: as many as they are high, or as there are before the next.

    `line`: about how many millimetres a line takes; 0 for a line without a picture.
    """
    drawn = [at for at, shown in enumerate(pictures) if shown]
    ends = dict(pairwise((*drawn, len(pictures))))
    return tuple(
        min(ends[at] - at, -(-sum(one.high + 2 for one in shown) // line)) if shown else 0
        for at, shown in enumerate(pictures)
    )


def drawn_once(blocks: Iterable[Block]) -> tuple[Block, ...]:
    """The blocks with each picture where it first stands, and nowhere again."""
    seen: set[tuple[str, str]] = set()
    return tuple(block._replace(parts=tuple(_fresh(group, seen) for group in block.parts)) for block in blocks)


def _fresh(group: Iterable[Part], seen: set[tuple[str, str]]) -> tuple[Part, ...]:
    """The parts of a group without what was seen before; what is seen now is noted. A row of none is left out."""

    def new(figures: tuple[Figure, ...]) -> tuple[Figure, ...]:
        kept = []
        for one in figures:
            if (one.svg, one.data) not in seen:
                seen.add((one.svg, one.data))
                kept.append(one)
        return tuple(kept)

    found: list[Part] = []
    for part in group:
        if isinstance(part, Steps):
            lines = [line._replace(figures=new(line.figures)) for line in part.lines]
            rows = spans([line.figures for line in lines], LINE)
            part = Steps(tuple(line._replace(rows=n) for line, n in zip(lines, rows, strict=True)))
        elif isinstance(part, Figures):
            part = Figures(new(part.figures))
            if not part.figures:
                continue
        found.append(part)
    return tuple(found)
