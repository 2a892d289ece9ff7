"""Hands: each job lies wholly in one shift that can do it, and a shift has no more hands than it has."""

from __future__ import annotations

from collections import defaultdict

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model_helper import Literal

from manchet.day.model import BREAK_BEFORE_OUT
from manchet.day.solving.frame import Frame
from manchet.day.windows import shifts_for

Duties = tuple[dict[int, Literal], ...]
"""For each job, by the number of a shift: that this shift does it. Empty where it wants no hands."""


def add_hands(frame: Frame) -> Duties:
    duties: list[dict[int, Literal]] = []
    in_shift: dict[int, list[tuple[cp_model.IntervalVar, int]]] = defaultdict(list)
    for number, job in enumerate(frame.day.jobs):
        duty: dict[int, Literal] = {}
        duties.append(duty)
        if job.hands == 0:
            continue
        shifts = shifts_for(frame.day, number, frame.spans[number])
        for at in shifts:
            duty[at] = frame.true if len(shifts) == 1 else frame.boolean()
            in_shift[at].append((frame.interval(number, duty[at]), job.hands))
            _lie_in(frame, number, at, duty[at])
        frame.exactly_one(list(duty.values()))
    for at, found in in_shift.items():
        hands = frame.day.shifts[at].hands
        if hands == 1:
            frame.model.add_no_overlap([interval for interval, _ in found])
        else:
            frame.model.add_cumulative([interval for interval, _ in found], [wanted for _, wanted in found], hands)
    _add_breaks(frame)
    return tuple(duties)


def _lie_in(frame: Frame, number: int, at: int, literal: Literal) -> None:
    shift, span, start = frame.day.shifts[at], frame.spans[number], frame.starts[number]
    last = shift.ends - frame.length(number)
    if span.low < shift.begins:
        frame.model.add(start >= shift.begins).only_enforce_if(literal)
    if span.high > last:
        frame.model.add(start <= last).only_enforce_if(literal)


def _add_breaks(frame: Frame) -> None:
    """Nobody is away in the last minutes before a load comes out."""
    for number, job in enumerate(frame.day.jobs):
        if job.is_break:
            for load in frame.day.loads:
                frame.model.add_bool_or(
                    frame.follows(number, load.take, job.minutes + BREAK_BEFORE_OUT),
                    frame.follows(load.take, number, 0),
                )
