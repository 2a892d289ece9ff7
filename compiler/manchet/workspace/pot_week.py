"""The pots over the week of a plan: what all its plans take of each culture and give back, and when it is fed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date, datetime, timedelta

from manchet.batch.work import Work
from manchet.day.finding import find_plan
from manchet.day.jobs.day_of import PlannedDay
from manchet.day.model import Timetable
from manchet.day.pot import PotMove, PotWeek, moves_of, pots_of
from manchet.day.said import Plan
from manchet.formula.step import Step
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import MOVES_OUT
from manchet.workspace.bakery import Bakery
from manchet.workspace.planning import day_planned

DAYS = 7


class PlannedWeek(NamedTuple):
    """Seven days from a Monday."""

    monday: date
    plans: tuple[tuple[date, str], ...]
    """The day and the name of each."""
    unplanned: tuple[str, ...]
    """Plans of which none was found: their doughs are not counted."""
    pots: tuple[PotWeek, ...]


class WorkedOut(NamedTuple):
    """A plan with its jobs, and when they begin."""

    of: PlannedDay
    timetable: Timetable


def work_out(plan: Plan, bakery: Bakery, with_solver: bool = True) -> WorkedOut | None:
    """None where no plan of it is found."""
    of = day_planned(plan, bakery).value
    planned = None if of is None else find_plan(of.day, with_solver).planned
    return None if of is None or planned is None else WorkedOut(of, planned.timetable)


def pot_week(around: date, bakery: Bakery, worked_out: Callable[[Plan], WorkedOut | None]) -> PlannedWeek:
    """The week that a day lies in."""
    monday = around - timedelta(days=around.weekday())
    plans = [plan for number in range(DAYS) for plan in bakery.plans_on(monday + timedelta(days=number))]
    moves: list[PotMove] = []
    unplanned: list[str] = []
    for plan in plans:
        found = worked_out(plan)
        if found is None:
            unplanned.append(plan.name)
        else:
            moves += _moves(found)
    cultures = {move.culture: known for move in moves if (known := bakery.larder.ingredient(move.culture)) is not None}
    there = {
        known.name: one.grams
        for plan in reversed(plans)
        for one in plan.already
        if one.grams is not None and (known := bakery.larder.ingredient(one.name)) is not None
    }
    last = monday + timedelta(days=DAYS - 1)
    pots = pots_of((move for move in moves if move.culture in cultures), cultures, last, there)
    return PlannedWeek(monday, tuple((plan.date, plan.name) for plan in plans), tuple(unplanned), pots)


def _moves(found: WorkedOut) -> tuple[PotMove, ...]:
    """What the breads of a plan move."""
    of = found.of
    took, gave = _times(of, found.timetable)
    works = (*(bread.work for bread in of.breads), *of.preparations)
    return tuple(move for work in works for move in moves_of(work, _of_bread(took, work), _of_bread(gave, work)))


def _of_bread(times: Mapping[tuple[str, str], datetime], work: Work) -> dict[str, datetime]:
    """By stage: its own, and those of the house."""
    return {stage: at for (bread, stage), at in times.items() if bread in ("", work.formula.name)}


def _times(
    of: PlannedDay, timetable: Timetable
) -> tuple[dict[tuple[str, str], datetime], dict[tuple[str, str], datetime]]:
    """When each stage is weighed, and when what is kept of it is taken out: by bread and stage; of a stage of the house by ""."""
    took: dict[tuple[str, str], datetime] = {}
    gave: dict[tuple[str, str], datetime] = {}
    for at, moment in enumerate(of.moments):
        if moment is None:
            continue
        clock = of.clock.at(timetable.starts[at]).replace(tzinfo=None)
        whose = "" if moment.making else moment.bread
        if any(part.does == "weigh" for part in moment.parts):
            took.setdefault((whose, moment.stage.key), clock)
        for part in moment.parts:
            if part.step is not None and part.step.verb in MOVES_OUT:
                gave.setdefault((moment.bread, _stage_of(of, moment.bread, part.step)), clock)
    return took, gave


def _stage_of(of: PlannedDay, bread: str, step: Step) -> str:
    """The key of the stage that a step stands in; "" where it is of none of the breads."""
    works = (one.work for one in of.breads if one.work.formula.name == bread)
    stages = (stage for work in works for stage in work.formula.stages)
    return next((stage.key for stage in stages if any(step is its for its in stage.steps)), "")
