"""A day planned again by the solver: the goals of the day, and among them what gives way and what moves."""

from __future__ import annotations

from collections.abc import Callable

from ortools.sat.python import cp_model

from manchet.day import goals
from manchet.day.again.fixing import Again
from manchet.day.again.moves import GOALS_AGAIN, beyond, colder, loads_colder, minutes_moved
from manchet.day.goals import MOST_ROOM, closes_at
from manchet.day.model import DayWait, Planned, Timetable
from manchet.day.solving.aims import (
    Aim,
    Aims,
    Beyond,
    Figures,
    age_aim,
    early_aim,
    late_aim,
    may_wait_aim,
    presence_aim,
    room_aim,
    total,
)
from manchet.day.solving.fires import CurveMinute
from manchet.day.solving.frame import Frame
from manchet.day.solving.hands import Duties
from manchet.day.solving.search import USUAL, Limits, planned_by_solver


def plan_again_by_solver(again: Again, known: Timetable | None, limits: Limits = USUAL) -> Planned | None:
    """The best plan that is found by the goals of planning again, none of them worse than `known` has it, those before it held;
    None where none is found."""
    return planned_by_solver(again.day, known, limits, _aims(again)).planned


def _aims(again: Again) -> Aims:
    def aims(frame: Frame, waits: Beyond, duties: Duties, floors: list[CurveMinute]) -> tuple[Aim, ...]:
        made = (
            late_aim(frame),
            _beyond(again, frame),
            may_wait_aim(frame, waits),
            _colder(again, frame, floors),
            _moved(again, frame),
            _room(again, frame, floors),
            presence_aim(frame, duties),
            age_aim(frame),
            early_aim(frame),
        )
        assert tuple(aim.name for aim in made) == GOALS_AGAIN
        return made

    return aims


def _beyond(again: Again, frame: Frame) -> Aim:
    figures: Figures = []
    for soft, own in zip(again.day.waits, again.own.waits, strict=True):
        if own.most is not None and soft.may > own.may:
            longest = own.most + own.may
            most = max(frame.apart(own.before, own.after)[1] - longest, 0)
            more = frame.model.new_int_var(0, most, "")
            frame.model.add(more >= frame.starts[own.after] - frame.starts[own.before] - longest)
            figures.append((more, _minutes_beyond(own)))
    return Aim("beyond", total(figures), 0, figures, lambda timetable: beyond(again, timetable))


def _minutes_beyond(wait: DayWait) -> Callable[[Timetable], int]:
    return lambda timetable: max(goals.beyond(wait, timetable) - wait.may, 0)


def _colder(again: Again, frame: Frame, floors: list[CurveMinute]) -> Aim:
    minutes: dict[int, cp_model.IntVar] = {}
    for soft, own in zip(floors, _own(again, floors), strict=True):
        if own.load not in minutes:
            minutes[own.load] = frame.model.new_int_var(0, soft.last - own.last, "")
        frame.model.add(minutes[own.load] >= own.minute - own.last).only_enforce_if(own.belongs)
    figures: Figures = [(figure, _minutes_colder(again, load)) for load, figure in minutes.items()]
    return Aim("colder", total(figures), 0, figures, lambda timetable: colder(again, timetable))


def _minutes_colder(again: Again, load: int) -> Callable[[Timetable], int]:
    return lambda timetable: dict(loads_colder(again, timetable)).get(load, 0)


def _own(again: Again, floors: list[CurveMinute]) -> list[CurveMinute]:
    """With the last minute at which the floor is in the heats that a load has of its own."""
    ovens = {oven.name: oven for oven in again.own.ovens}
    loads = again.own.loads
    return [floor._replace(last=closes_at(ovens[loads[floor.load].oven], loads[floor.load])) for floor in floors]


def _moved(again: Again, frame: Frame) -> Aim:
    figures: Figures = []
    for job, (start, was) in enumerate(zip(frame.starts, again.was, strict=True)):
        if job not in again.begun:
            low, high = frame.spans[job]
            moved = frame.model.new_int_var(0, max(high - was, was - low, 0), "")
            frame.model.add(moved >= start - was)
            frame.model.add(moved >= was - start)
            figures.append((moved, _minutes_from(job, was)))
    return Aim("moved", total(figures), 0, figures, lambda timetable: minutes_moved(again, timetable))


def _minutes_from(job: int, was: int) -> Callable[[Timetable], int]:
    return lambda timetable: abs(timetable.starts[job] - was)


def _room(again: Again, frame: Frame, floors: list[CurveMinute]) -> Aim:
    """What is beyond its range has less room than none."""
    most = MOST_ROOM + 2 * (again.day.finishes - again.day.begins)
    return room_aim(frame, again.own, _own(again, floors), most)
