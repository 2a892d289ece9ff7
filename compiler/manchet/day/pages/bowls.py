"""What is weighed for a planned day, in the order it is needed: sittings, each of the bowls of one stretch of work."""

from __future__ import annotations

from manchet.batch.scales import System
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.records import NamedTuple

SITTING = 60
"""Minutes within which bowls are weighed in one go, from the first of them on. Our own rule."""


class BowlOfDay(NamedTuple):
    """One stage of one bread, with what its scale reads. Minutes of the day."""

    work: Work
    table: Table
    wanted: tuple[int, ...]
    """When it is begun, each mix."""
    shares: tuple[str, ...]
    """The other breads that the same tub is made for."""


class WeighingSitting(NamedTuple):
    shift: int
    bowls: tuple[BowlOfDay, ...]

    @property
    def begins(self) -> int:
        return self.bowls[0].wanted[0]


def sittings(plan: DayPlan, system: System = System.METRIC) -> tuple[WeighingSitting, ...]:
    """By the clock, shift by shift: a bowl of several mixes once, where the first is begun."""
    works = works_of(plan)
    found: list[tuple[int, BowlOfDay]] = []
    weighed = [
        at for at, moment in enumerate(plan.of.moments) if moment is not None and moment.parts[0].does == "weigh"
    ]
    seen: dict[tuple[str, str], int] = {}
    for job in sorted(weighed, key=lambda at: (plan.begins(at), at)):
        moment = plan.of.moments[job]
        if moment is None:
            continue
        breads = plan.day.jobs[job].breads
        for bread in breads:
            if works[bread].formula.dish and moment.stage == works[bread].dough.stage:
                continue  # a plate is built by count, on its own sheet
            key = (bread, moment.stage.key)
            if key in seen:
                shift, bowl = found[seen[key]]
                found[seen[key]] = (shift, bowl._replace(wanted=(*bowl.wanted, plan.begins(job))))
                continue
            table = _table(works[bread], moment.stage.key, system)
            if table is not None:
                seen[key] = len(found)
                others = tuple(other for other in breads if other != bread)
                found.append((plan.timetable.shifts[job], BowlOfDay(works[bread], table, (plan.begins(job),), others)))
    return _in_sittings(found)


def _table(work: Work, key: str, system: System) -> Table | None:
    return next((one for one in weighings(work, system).value if one.making.stage.stage.key == key), None)


def _in_sittings(bowls: list[tuple[int, BowlOfDay]]) -> tuple[WeighingSitting, ...]:
    found: list[WeighingSitting] = []
    for shift, bowl in bowls:
        last = found[-1] if found else None
        if last is not None and last.shift == shift and bowl.wanted[0] - last.begins <= SITTING:
            found[-1] = last._replace(bowls=(*last.bowls, bowl))
        else:
            found.append(WeighingSitting(shift, (bowl,)))
    return tuple(found)
