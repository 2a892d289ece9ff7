"""How long a day of ever more breads takes to plan, by hand and by the solver, and how good the plan is."""

from __future__ import annotations

import time
from argparse import Namespace
from collections.abc import Callable, Iterator
from typing import TypeVar

from grown_days import grown_day

from manchet.day.checking import check_planned
from manchet.day.model import Day, Planned
from manchet.day.posting import plan_by_hand

T = TypeVar("T")
SIZES = (5, 10, 20, 40)
HOPED = {5: 0.15, 10: 0.15, 20: 0.15, 40: 1.0}
SEEDS = range(16)
BY_SOLVER = range(2)
"""Bakeries of each size and kind that the solver plans, too, from the plan by hand on."""


def planning(_: Namespace) -> Iterator[tuple[str, float, str]]:
    """Of sixteen bakeries of each size, and of sixteen more whose ovens are fuller: each that is late or waits beyond a range, and
    a few of the others, by hand and by the solver; then the seconds by hand of the middle one and of the slowest."""
    for breads in SIZES:
        for crowded in (False, True):
            taken = []
            for seed in SEEDS:
                day = grown_day(breads, seed, crowded)
                seconds, found = _timed(lambda day=day: _by_hand(day))  # type: ignore[misc]
                taken.append(seconds)
                if seed in BY_SOLVER or not _is_on_time(day, found):
                    name = f"{breads} breads{' crowded' if crowded else ''}, bakery {seed}"
                    yield f"{name} by hand: {_words(day, found)}", seconds, ""
                    yield _by_solver(name, day, found)
            words = f"{breads} breads{' crowded' if crowded else ''} by hand"
            yield f"{words}: the middle", sorted(taken)[len(taken) // 2], f"{HOPED[breads]}"
            yield f"{words}: the slowest", max(taken), ""


def _by_solver(name: str, day: Day, found: Planned | None) -> tuple[str, float, str]:
    from manchet.day.solving.search import Limits, planned_by_solver

    known = found.timetable if found else None
    seconds, answer = _timed(lambda: planned_by_solver(day, known, Limits(then=0)))
    return f"{name} by the solver: {_words(day, answer.planned)}", seconds, ""


def _by_hand(day: Day) -> Planned | None:
    found = plan_by_hand(day)
    return found if isinstance(found, Planned) else None


def _timed(work: Callable[[], T]) -> tuple[float, T]:
    began = time.process_time()
    found = work()
    return time.process_time() - began, found


def _is_on_time(day: Day, found: Planned | None) -> bool:
    """And believed by the checker."""
    return found is not None and not check_planned(day, found) and all(goal.value == 0 for goal in found.goals[:2])


def _words(day: Day, found: Planned | None) -> str:
    if found is None:
        return "not planned"
    refused = check_planned(day, found)
    return (
        f"REFUSED, {refused[0].words}"
        if refused
        else ", ".join(f"{goal.name} {goal.value}" for goal in found.goals[:2])
    )
