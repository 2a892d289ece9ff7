"""The pieces of a preparation as they are weighed off, raw, whether the file gives their raw weight or that of the ready piece."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Makes, Step
from manchet.syntax.vocabulary import COOKS


def raw_pieces(makes: tuple[Makes, ...], steps: tuple[Step, ...]) -> tuple[Makes, ...]:
    """Raw weight = ready weight / (1 - what is lost from the last heat on)."""
    left = left_of_raw(steps)
    return tuple(
        one._replace(grams=one.written / left if one.state in READY else one.written) if one.written else one
        for one in makes
    )


READY = frozenset({"ready", "baked"})


def left_of_raw(steps: tuple[Step, ...]) -> Fraction:
    """What is left of a raw piece when it is ready, as a share of it."""
    heat = max((n for n, step in enumerate(steps) if step.verb in COOKS), default=len(steps))
    return _left(steps[heat:])


def _left(steps: Iterable[Step]) -> Fraction:
    left = Fraction(1)
    for step in steps:
        left *= 1 - (step.loses or 0)
    return left
