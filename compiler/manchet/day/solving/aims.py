"""The goals as the model has them: what is made as little as it can be, and what a given plan makes of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from ortools.sat.python import cp_model

from manchet.day import goals
from manchet.day.goals import GOALS, MOST_ROOM
from manchet.day.model import Day, DayWait, End, Timetable
from manchet.day.solving.fires import CurveMinute
from manchet.day.solving.frame import Frame
from manchet.day.solving.hands import Duties
from manchet.records import NamedTuple

Figures = list[tuple[cp_model.IntVar, Callable[[Timetable], int]]]
"""Variables that only a goal asks for, with what each is in a plan. The model leaves them room upwards."""


class Aim(NamedTuple):
    """One goal, always so that less is better."""

    name: str
    value: cp_model.LinearExprT
    least: int
    """No plan does better, whatever is planned."""
    figures: Figures
    reached: Callable[[Timetable], int]
    """What a plan makes of it, counted off the plan."""


Beyond = list[tuple[cp_model.IntVar, DayWait]]
"""Of waits that may be longer than their range, how much longer they are."""

Aims = Callable[[Frame, Beyond, Duties, list[CurveMinute]], tuple[Aim, ...]]


def aims_of(frame: Frame, beyond: Beyond, duties: Duties, floors: list[CurveMinute]) -> tuple[Aim, ...]:
    """In the order of `GOALS`."""
    made = (
        late_aim(frame),
        may_wait_aim(frame, beyond),
        room_aim(frame, frame.day, floors, MOST_ROOM),
        presence_aim(frame, duties),
        age_aim(frame),
        early_aim(frame),
    )
    assert tuple(aim.name for aim in made) == GOALS
    return made


def late_aim(frame: Frame) -> Aim:
    figures: Figures = []
    for end in frame.day.ends:
        due = end.due - end.after - frame.length(end.job)
        latest = frame.spans[end.job].high
        if latest > due:
            late = frame.model.new_int_var(0, latest - due, "")
            frame.model.add(late >= frame.starts[end.job] - due)
            figures.append((late, _minutes_late(frame, end)))
    return Aim("late", total(figures), 0, figures, lambda timetable: goals.late(frame.day, timetable))


def _minutes_late(frame: Frame, end: End) -> Callable[[Timetable], int]:
    only = frame.day._replace(ends=(end,))
    return lambda timetable: goals.late(only, timetable)


def may_wait_aim(frame: Frame, beyond: Beyond) -> Aim:
    figures: Figures = [(more, _minutes_beyond(wait)) for more, wait in beyond]
    return Aim("may wait", total(figures), 0, figures, lambda timetable: goals.may_wait(frame.day, timetable))


def _minutes_beyond(wait: DayWait) -> Callable[[Timetable], int]:
    return lambda timetable: goals.beyond(wait, timetable)


def room_aim(frame: Frame, day: Day, floors: Sequence[CurveMinute], most: int) -> Aim:
    """Room under the ranges of a day, which may be narrower than those that the model holds to; at most so many minutes are
    wanting."""
    wanting = frame.model.new_int_var(0, most, "")
    put = {load.put for load in day.loads}
    for wait in day.waits:
        if wait.after in put and wait.most is not None:
            passed = frame.starts[wait.after] - frame.starts[wait.before]
            frame.model.add(wait.most + wait.may - passed >= MOST_ROOM - wanting)
    for floor in floors:
        frame.model.add(floor.last - floor.minute >= MOST_ROOM - wanting).only_enforce_if(floor.belongs)

    def reached(timetable: Timetable) -> int:
        return MOST_ROOM - goals.room(day, timetable)

    return Aim("room", wanting, 0, [(wanting, reached)], reached)


def presence_aim(frame: Frame, duties: Duties) -> Aim:
    figures: Figures = []
    spans: list[cp_model.LinearExprT] = []
    for number, shift in enumerate(frame.day.shifts):
        mine = [
            (job, duty[number])
            for job, duty in enumerate(duties)
            if number in duty and not frame.day.jobs[job].is_break
        ]
        if not mine:
            continue
        first, last = (frame.model.new_int_var(shift.begins, shift.ends, "") for _ in range(2))
        frame.model.add(first <= last)
        for job, literal in mine:
            frame.model.add(first <= frame.starts[job]).only_enforce_if(literal)
            frame.model.add(last >= frame.starts[job] + frame.length(job)).only_enforce_if(literal)
        # Follows from the rest where there is one pair of hands; said outright it lets the solver prove far more.
        works = cp_model.LinearExpr.weighted_sum(
            [literal for _, literal in mine], [frame.length(job) * frame.day.jobs[job].hands for job, _ in mine]
        )
        frame.model.add(shift.hands * (last - first) >= works)
        spans.append(last - first)
        figures.append((first, _moment(frame, number, is_last=False)))
        figures.append((last, _moment(frame, number, is_last=True)))
    return Aim("presence", sum(spans), 0, figures, lambda timetable: goals.presence(frame.day, timetable))


def _moment(frame: Frame, shift: int, *, is_last: bool) -> Callable[[Timetable], int]:
    def moment(timetable: Timetable) -> int:
        found = goals.span_of(frame.day, timetable, shift)
        return found[is_last] if found else frame.day.shifts[shift].begins

    return moment


def age_aim(frame: Frame) -> Aim:
    figures: Figures = []
    for end in frame.day.ends:
        comes = end.due - frame.length(end.job)
        most = max(comes - frame.spans[end.job].low, 0)
        age = frame.model.new_int_var(0, most, "")
        frame.model.add(age >= comes - frame.starts[end.job])
        figures.append((age, _minutes_old(frame, end)))
    return Aim("age", total(figures), 0, figures, lambda timetable: goals.age(frame.day, timetable))


def _minutes_old(frame: Frame, end: End) -> Callable[[Timetable], int]:
    only = frame.day._replace(ends=(end,))
    return lambda timetable: goals.age(only, timetable)


def early_aim(frame: Frame) -> Aim:
    fires = {fire.light for fire in frame.day.fires}
    value = sum(
        frame.day.finishes - start if at in fires else start - frame.day.begins
        for at, start in enumerate(frame.starts)
        if not frame.day.jobs[at].is_break
    )
    return Aim("early", value, 0, [], lambda timetable: goals.early(frame.day, timetable))


def total(figures: Figures) -> cp_model.LinearExprT:
    return sum(figure for figure, _ in figures)
