"""What is seen to before somebody goes: what is put back, what stands meanwhile, what the next one does first."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.day.model import DayWait, Fire
from manchet.day.pages.day_plan import DayPlan
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import MOVES_OUT

EVENING = 4 * 60
"""Minutes for which the house is empty after a shift that is an evening's. Our own rule."""


class Leaving(NamedTuple):
    """Of one shift. Jobs, waits and shifts by their numbers or as they are; minutes of the day."""

    put_back: tuple[tuple[int, int], ...]
    """(job, part) that keeps some of a stage back, returns it to its pot or is done away with."""
    fires: tuple[Fire, ...]
    """Lit before whoever comes next has gone again."""
    stands: tuple[DayWait, ...]
    """What stands by itself while nobody is there, each once, by its end."""
    next_shift: int
    """-1 after the last."""
    next_job: int
    """The first that it does; -1."""
    empty_until: int
    """When somebody is there again; the end of the shift itself where nobody has gone yet."""


def leaving(plan: DayPlan, shift: int) -> Leaving:
    day = plan.day
    gone = day.shifts[shift].ends
    later = [at for at, one in enumerate(day.shifts) if one.ends > gone and plan.of_shift(at)]
    after = min(later, key=lambda at: day.shifts[at].begins, default=-1)
    back = gone if after < 0 else max(day.shifts[after].begins, gone)
    stands = [
        wait
        for wait in day.waits
        if wait.what and plan.ends(wait.before) <= gone and plan.begins(wait.after) >= back > gone
    ]
    return Leaving(
        tuple((at, part) for at in plan.of_shift(shift) for part in _put_back(plan, at)),
        tuple(fire for fire in day.fires if after >= 0 and plan.timetable.shifts[fire.light] == after),
        _once(sorted(stands, key=lambda wait: plan.begins(wait.after))),
        after,
        -1 if after < 0 else _first_work(plan, after),
        back,
    )


def _once(waits: Iterable[DayWait]) -> tuple[DayWait, ...]:
    """What stands from one job on, to whichever is the first that takes of it: one poolish for two mixes is one tub."""
    first: dict[int, DayWait] = {}
    for wait in waits:
        first.setdefault(wait.before, wait)
    return tuple(first.values())


def _first_work(plan: DayPlan, shift: int) -> int:
    """Of what a shift does the first that is no break, if it has any."""
    jobs = plan.of_shift(shift)
    return next((at for at in jobs if not plan.day.jobs[at].is_break), jobs[0])


def _put_back(plan: DayPlan, job: int) -> list[int]:
    moment = plan.of.moments[job]
    parts = () if moment is None else moment.parts
    return [at for at, part in enumerate(parts) if part.step is not None and part.step.verb in MOVES_OUT]


def is_evening(plan: DayPlan, shift: int) -> bool:
    """The first shift, where the house is then empty for hours: what it does is the evening before."""
    first = min(range(len(plan.day.shifts)), key=lambda at: plan.day.shifts[at].begins)
    left = leaving(plan, shift)
    return shift == first and left.next_shift >= 0 and left.empty_until - plan.day.shifts[shift].ends >= EVENING


class Counted(NamedTuple):
    """How many of a thing of the kitchen are wanted at once, at most."""

    name: str
    wanted: int
    there: int


def equipment(plan: DayPlan) -> tuple[Counted, ...]:
    """Baskets, tins, trays, linen: what is counted before the day begins."""
    found = []
    for vessel in plan.said.kitchen.vessels:
        place = next((place for place in plan.day.places if place.name == vessel.name), None)
        if place is None or not vessel.number:
            continue
        taken = (_taken(plan, vessel.name, plan.begins(s.begins)) for s in plan.day.stays if s.place == vessel.name)
        most = max(taken, default=0)
        if not most:
            continue
        found.append(Counted(vessel.name, -int(-Fraction(most * vessel.number, place.holds) // 1), vessel.number))
    return tuple(found)


def _taken(plan: DayPlan, place: str, minute: int) -> int:
    stays = [stay for stay in plan.day.stays if stay.place == place]
    return sum(stay.takes for stay in stays if plan.begins(stay.begins) <= minute < plan.ends(stay.ends))
