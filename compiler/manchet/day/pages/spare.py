"""Where a plan has least to spare: at the oven, and in somebody's hands."""

from __future__ import annotations

from manchet.day.goals import minute_of_curve
from manchet.day.pages.day_plan import DayPlan
from manchet.day.windows import minutes_in_heat
from manchet.records import NamedTuple


class LoadSpare(NamedTuple):
    """By how many minutes a load could go in later."""

    load: int
    minutes: int
    by_floor: bool
    """The floor is then too cold; else its dough has waited as long as it may."""
    what: str = ""
    """That wait: "prove"."""


class BackToBack(NamedTuple):
    """One job of a shift right after the other. Minutes of the day."""

    shift: int
    begins: int
    ends: int
    jobs: int


def least_spare(plan: DayPlan) -> LoadSpare | None:
    """The load with the least room; None where no load has any bound."""
    found = [spare for number in plan.loads_in_order() for spare in spare_of(plan, number)]
    return min(found, key=lambda one: one.minutes, default=None)


def spare_of(plan: DayPlan, number: int) -> list[LoadSpare]:
    """Of one load, by its waits (with what they may wait) and by the floor."""
    load = plan.day.loads[number]
    start = plan.begins(load.put)
    found = [
        LoadSpare(number, plan.begins(wait.before) + wait.most + wait.may - start, False, wait.what)
        for wait in plan.day.waits
        if wait.after == load.put and wait.most is not None
    ]
    oven = next(oven for oven in plan.day.ovens if oven.name == load.oven)
    minute = minute_of_curve(plan.day, plan.timetable, load) if oven.curve else None
    last = minutes_in_heat(oven, load)[1]
    if minute is not None and minute >= 0 and last is not None:
        found.append(LoadSpare(number, last - minute, True))
    return found


def back_to_back(plan: DayPlan) -> BackToBack | None:
    """The longest time in which somebody never stops; None where nobody does two jobs on end."""
    found = []
    for shift in range(len(plan.day.shifts)):
        jobs = [at for at in plan.of_shift(shift) if not plan.day.jobs[at].is_break]
        run: list[int] = []
        for at in jobs:
            if run and plan.begins(at) > max(plan.ends(one) for one in run):
                run = []
            run.append(at)
            if len(run) > 1:
                found.append(BackToBack(shift, plan.begins(run[0]), max(plan.ends(one) for one in run), len(run)))
    return max(found, key=lambda one: (one.ends - one.begins, -one.begins), default=None)
