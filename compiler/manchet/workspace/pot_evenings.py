"""What the pots want on the evenings of a plan: from its own evening on, until the one before the next plan."""

from __future__ import annotations

from datetime import date, timedelta

from manchet.day.jobs.day_of import PlannedDay
from manchet.day.model import Planned
from manchet.day.pages.day_plan import PotFed
from manchet.day.said import Plan
from manchet.workspace.bakery import Bakery
from manchet.workspace.pot_week import WorkedOut, pot_week, work_out

MORNING = timedelta(hours=12)
"""A plan that begins before noon has the evening before. Our own rule."""


def pots_fed(plan: Plan, of: PlannedDay, planned: Planned, bakery: Bakery) -> tuple[PotFed, ...]:
    """Each feeding of the week is told by one plan. The other plans of the week are worked out without the solver, since no
    more than their evenings count."""
    evenings: dict[str, date] = {}

    def worked_out(one: Plan) -> WorkedOut | None:
        is_own = one.name == plan.name
        found = WorkedOut(of, planned.timetable) if is_own else work_out(one, bakery, with_solver=False)
        if found is not None:
            evenings[one.name] = (found.of.clock.at(found.of.day.begins) - MORNING).date()
        return found

    week = pot_week(plan.date, bakery, worked_out)
    mine = evenings.get(plan.name)
    if mine is None:
        return ()
    earlier, later = [on for on in evenings.values() if on < mine], [on for on in evenings.values() if on > mine]
    return tuple(
        PotFed(pot.culture, fed)
        for pot in week.pots
        for fed in pot.feedings
        if (fed.on >= mine or not earlier) and fed.on < min(later, default=date.max)
    )
