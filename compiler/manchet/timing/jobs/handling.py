"""What no file writes as a step and every step of its kind brings with it: weighing, loading, taking out, keeping back."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.model import StageBatch
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.timing.jobs import usual_times


class Handling(NamedTuple):
    """Work of one pair of hands: there is one scale at a bowl, and one place at an oven's door."""

    does: str
    """"weigh", "load", "take out", or the verb by which some of a stage is kept back."""
    seconds: Fraction
    is_estimate: bool
    """Nobody says how long it takes."""


def weighing(made: StageBatch, kitchen: Kitchen) -> Handling:
    """All that a stage is weighed from, line by line."""
    return _each("weigh", Fraction(len(made.weighed)), usual_times.WEIGH, kitchen)


def loading(pieces: Fraction, kitchen: Kitchen) -> Handling:
    """Through an oven's door; pieces that nobody counts are one."""
    return _each("load", pieces, usual_times.LOAD, kitchen)


def taking_out(pieces: Fraction, kitchen: Kitchen) -> Handling:
    return _each("take out", pieces, usual_times.TAKE_OUT, kitchen)


def _each(does: str, number: Fraction, usual: int, kitchen: Kitchen) -> Handling:
    each = dict(kitchen.minutes).get(does)
    seconds = Fraction(usual) if each is None else each
    return Handling(does, seconds * max(number, Fraction(1)), each is None)


def seconds_of(handlings: Iterable[Handling]) -> Fraction:
    return sum((one.seconds for one in handlings), Fraction(0))
