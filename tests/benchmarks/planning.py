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
SEEDS = range(8)


def planning(_: Namespace) -> Iterator[tuple[str, float, str]]:
    """Of eight bakeries of each size: seconds of the middle and of the slowest, then the solver's for the first of them."""
    from manchet.day.solving.search import Limits, planned_by_solver

    for breads in SIZES:
        days = [grown_day(breads, seed) for seed in SEEDS]
        taken = []
        for seed, day in enumerate(days):
            seconds, found = _timed(lambda day=day: _by_hand(day))  # type: ignore[misc]
            taken.append(seconds)
            if not _is_on_time(day, found):
                yield f"{breads} breads, bakery {seed}: {_words(day, found)}", seconds, ""
        yield (
            f"{breads} breads by hand, {len(days[0].jobs)} jobs: the middle",
            sorted(taken)[len(taken) // 2],
            f"{HOPED[breads]}",
        )
        yield f"{breads} breads by hand: the slowest", max(taken), ""
        first = _by_hand(days[0])
        known = first.timetable if first else None
        seconds, answer = _timed(lambda day=days[0], known=known: planned_by_solver(day, known, Limits(then=0)))  # type: ignore[misc]
        yield f"{breads} breads by the solver: {_words(days[0], answer.planned)}", seconds, ""


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
