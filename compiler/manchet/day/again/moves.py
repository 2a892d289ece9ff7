"""What planning again costs, in the order it counts, and what moved."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day import goals
from manchet.day.again.fixing import Again
from manchet.day.model import Timetable
from manchet.records import NamedTuple

GOALS_AGAIN = ("late", "beyond", "may wait", "colder", "moved", "room", "presence", "age", "early")
"""Each is held at what was reached before the next is looked at."""


class Move(NamedTuple):
    """A job that is no longer when, or no longer whose, it was."""

    job: int
    was: int
    start: int
    shift_was: int
    shift: int


def cost_again(again: Again, timetable: Timetable) -> tuple[int, ...]:
    """Of each of `GOALS_AGAIN` what the plan reaches, all so that less is better. A day's own goals stand among them."""
    late, may_wait, *others = goals.cost(again.own, timetable)
    return (
        late,
        beyond(again, timetable),
        may_wait,
        colder(again, timetable),
        minutes_moved(again, timetable),
        *others,
    )


def beyond(again: Again, timetable: Timetable) -> int:
    """Minutes that waits are longer than they may be, all together."""
    waits = (
        timetable.starts[wait.after] - timetable.starts[wait.before] - wait.most - wait.may
        for wait in again.own.waits
        if wait.most is not None
    )
    return sum(max(minutes, 0) for minutes in waits)


def colder(again: Again, timetable: Timetable) -> int:
    """Minutes of the curve that loads go in after the floor was in their heats, all together."""
    return sum(minutes for _, minutes in loads_colder(again, timetable))


def loads_colder(again: Again, timetable: Timetable) -> Iterator[tuple[int, int]]:
    """The loads that find a colder floor than they want, and bake longer: with those minutes of the curve."""
    ovens = {oven.name: oven for oven in again.own.ovens}
    for number, load in enumerate(again.own.loads):
        if not ovens[load.oven].curve or load.enters is None:
            continue
        minute = goals.minute_of_curve(again.own, timetable, load)
        if minute is not None and minute > goals.closes_at(ovens[load.oven], load):
            yield number, minute - goals.closes_at(ovens[load.oven], load)


def minutes_moved(again: Again, timetable: Timetable) -> int:
    return sum(abs(start - was) for start, was in zip(timetable.starts, again.was, strict=True))


def moves(again: Again, timetable: Timetable) -> tuple[Move, ...]:
    """The first to begin first."""
    found = (
        Move(job, again.was[job], timetable.starts[job], again.last.shifts[job], timetable.shifts[job])
        for job in range(len(again.was))
        if job not in again.begun
    )
    moved = (move for move in found if (move.was, move.shift_was) != (move.start, move.shift))
    return tuple(sorted(moved, key=lambda move: (move.start, move.job)))
