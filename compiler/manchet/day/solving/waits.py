"""Waits between jobs, loads that come out when their time is up, and ends."""

from __future__ import annotations

from ortools.sat.python import cp_model

from manchet.day.model import DayWait
from manchet.day.solving.frame import Frame


def add_waits(frame: Frame) -> list[tuple[cp_model.IntVar, DayWait]]:
    """Gives the minutes beyond its range of each wait that may be longer."""
    beyond = []
    for wait in frame.day.waits:
        frame.lag(wait.before, wait.after, wait.least)
        if wait.most is None:
            continue
        longest = min(frame.apart(wait.before, wait.after)[1] - wait.most, wait.may)
        if longest <= 0:
            frame.lag(wait.after, wait.before, -wait.most)
            continue
        more = frame.model.new_int_var(0, longest, "")
        frame.model.add(frame.starts[wait.after] - frame.starts[wait.before] <= wait.most + more)
        beyond.append((more, wait))
    for load in frame.day.loads:
        frame.model.add(frame.starts[load.take] - frame.starts[load.put] == load.stays)
    return beyond
