"""The whole model of a day, topic by topic."""

from __future__ import annotations

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model_helper import Literal

from manchet.day.model import Day, Timetable
from manchet.day.solving.aims import Aim, Aims, aims_of
from manchet.day.solving.alike import number_anew
from manchet.day.solving.fires import add_fires, add_floors, mouths_of
from manchet.day.solving.frame import Frame, frame_of
from manchet.day.solving.hands import Duties, add_hands
from manchet.day.solving.mixers import add_mixers
from manchet.day.solving.ovens import Decks, add_ovens
from manchet.day.solving.places import add_places
from manchet.day.solving.waits import add_waits
from manchet.day.windows import windows_of
from manchet.records import NamedTuple


class Whole(NamedTuple):
    """Everything that a plan must hold to, said to the solver."""

    frame: Frame
    duties: Duties
    decks: Decks
    aims: tuple[Aim, ...]


def whole_of(day: Day, aims: Aims = aims_of) -> Whole | None:
    """None where some job can begin at no time, so that there is nothing to search."""
    spans = windows_of(day)
    if any(span.low > span.high for span in spans):
        return None
    frame = frame_of(day, spans)
    beyond = add_waits(frame)
    duties = add_hands(frame)
    add_mixers(frame)
    add_places(frame)
    hearths = add_fires(frame)
    decks, turns = add_ovens(frame, mouths_of(frame, hearths))
    floors = add_floors(frame, hearths, turns)
    return Whole(frame, duties, decks, aims(frame, beyond, duties, floors))


def chosen(whole: Whole, timetable: Timetable) -> dict[int, int]:
    """What a plan says, by the index of a variable; all others follow from these."""
    said = {start.index: minute for start, minute in zip(whole.frame.starts, timetable.starts, strict=True)}
    for duty, shift in zip(whole.duties, timetable.shifts, strict=True):
        said.update((literal.index, int(at == shift)) for at, literal in duty.items())
    day = whole.frame.day
    for oven in day.ovens:
        mine = [number for number, load in enumerate(day.loads) if load.oven == oven.name]
        for number, deck in zip(mine, number_anew(tuple(timetable.decks[number] for number in mine)), strict=True):
            said.update((literal.index, int(at == deck)) for at, literal in whole.decks[number].items())
    return said


def timetable_of(whole: Whole, solver: cp_model.CpSolver) -> Timetable:
    day = whole.frame.day
    return Timetable(
        tuple(solver.value(start) for start in whole.frame.starts),
        tuple(_number(solver, duty) if duty else -1 for duty in whole.duties),
        tuple(_number(solver, whole.decks[load]) for load in range(len(day.loads))),
    )


def _number(solver: cp_model.CpSolver, literals: dict[int, Literal]) -> int:
    return next(at for at, literal in literals.items() if solver.boolean_value(literal))
