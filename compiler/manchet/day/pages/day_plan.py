"""A planned day as its pages show it: what the plan says, its jobs and waits, and the plan that was found."""

from __future__ import annotations

from manchet.batch.work import Work, in_mixes
from manchet.day.jobs.day_of import PlannedDay
from manchet.day.model import Day, DayJob, Planned, Timetable
from manchet.day.pot import Feeding
from manchet.day.said import Plan
from manchet.records import NamedTuple


class PotFed(NamedTuple):
    """A culture, and how its pot is fed on an evening."""

    culture: str
    feeding: Feeding


class DayPlan(NamedTuple):
    """All that is printed of a plan is worked out of this."""

    said: Plan
    of: PlannedDay
    planned: Planned
    pots: tuple[PotFed, ...] = ()
    """The feedings from its evening until the next plan's."""

    @property
    def day(self) -> Day:
        return self.of.day

    @property
    def timetable(self) -> Timetable:
        return self.planned.timetable

    def begins(self, job: int) -> int:
        """The minute of the day."""
        return self.timetable.starts[job]

    def ends(self, job: int) -> int:
        return self.timetable.starts[job] + self.day.jobs[job].minutes

    def of_shift(self, shift: int) -> list[int]:
        """Its jobs, as they begin."""
        mine = (at for at, by in enumerate(self.timetable.shifts) if by == shift)
        return sorted(mine, key=lambda at: (self.begins(at), at))

    def loads_in_order(self) -> list[int]:
        """Numbers of the loads as they go in."""
        loads = self.day.loads
        return sorted(range(len(loads)), key=lambda at: (self.begins(loads[at].put), at))


def works_of(plan: DayPlan) -> dict[str, Work]:
    """By name: the breads, and the preparations that are made for the day; each in as many mixes as it is made in."""
    mixes: dict[str, int] = {}
    for moment in plan.of.moments:
        if moment is not None:
            mixes[moment.bread] = max(moment.mix, mixes.get(moment.bread, 1))
    works = [*(bread.work for bread in plan.of.breads), *plan.of.preparations]
    found = {work.formula.name: work for work in works}
    for name in plan.of.mixed_by_load:
        found[name] = in_mixes(found[name], mixes[name])
    return found


def title_of(job: DayJob) -> str:
    return ", ".join(job.breads)
