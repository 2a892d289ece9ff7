"""The rows of a shift, day by day, and what gives when it runs late."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.late import RunningLate, running_late
from manchet.day.pages.shift_moments import ShiftMoment, moments_of
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_jobs import JobWords
from manchet.sheets.parts.day_views import LateBread, LateJobs, WorkDay, WorkRow


def work_days(plan: DayPlan, shift: int, m: Measures) -> tuple[WorkDay, ...]:
    """What the shift does, a moment a row."""
    wall, words = WallTime(plan, m), JobWords(plan, works_of(plan), m)
    days = groupby(moments_of(plan, shift), key=lambda one: wall.day(one.begins))
    return tuple(WorkDay(day, tuple(_row(plan, one, words, wall) for one in rows)) for day, rows in days)


def _row(plan: DayPlan, moment: ShiftMoment, words: JobWords, wall: WallTime) -> WorkRow:
    minutes = wall.minutes(moment.ends - moment.begins)
    return WorkRow(
        clock=wall.clock(moment.begins),
        lines=words.lines(moment.jobs, moment.begins),
        start_by="" if moment.is_sharp else wall.clock(moment.begins + moment.slip),
        sharp=moment.is_sharp,
        minutes=wall.m.words.say("day.about", minutes) if _is_estimate(plan, moment) else minutes,
    )


def _is_estimate(plan: DayPlan, moment: ShiftMoment) -> bool:
    """Of some of it nobody says how long it takes."""
    done = [plan.of.moments[at] for at in moment.jobs if not plan.day.jobs[at].is_break]
    return any(one is None or any(part.is_estimate for part in one.parts) for one in done)


def has_estimates(days: tuple[WorkDay, ...], m: Measures) -> bool:
    return any(row.minutes.startswith(m.words.say("day.about", "")) for day in days for row in day.rows)


def no_delay(plan: DayPlan, m: Measures) -> str:
    """That nothing delays the fire, or the oven where none is fired; "" where the plan heats none."""
    if not plan.day.fires:
        return ""
    fired = {oven.name for oven in plan.day.ovens if oven.curve}
    return m.words["day.no_delay" if any(fire.oven in fired for fire in plan.day.fires) else "day.no_delay_oven"]


def late_breads(plan: DayPlan, shift: int, m: Measures) -> tuple[LateBread, ...]:
    """A line for each bread, by the clock."""
    lines = groupby(running_late(plan, shift), key=lambda one: one.bread)
    return tuple(LateBread(bread, tuple(_late(plan, one, m) for one in jobs)) for bread, jobs in lines)


def _late(plan: DayPlan, one: RunningLate, m: Measures) -> LateJobs:
    wall, say = WallTime(plan, m), m.words.say
    if not one.minutes:
        return LateJobs(say("day.from", wall.clock(one.first)), m.words["day.nothing_gives"])
    late = wall.minutes(one.minutes)
    stands_ready = one.shorter == one.bread
    gives = say("day.ready_for_it", late) if stands_ready else say("day.up_to", late, waits_said(one.shorter, m))
    if one.may:
        gives = say("day.look_first", gives, waits_said(one.before, m), wall.minutes(one.may))
    return LateJobs(wall.span(one.first, one.last), gives)


def waits_said(what: str, m: Measures) -> str:
    """`bulk and chill` for `ferment, chill`; a wait for a preparation keeps its name."""
    return m.words["day.and"].join(_waits(what, m))


def _waits(what: str, m: Measures) -> Iterator[str]:
    for verb in what.split(", "):
        known = m.words.known("waits", verb)
        yield known or (wording.verb_alone(verb, m) if m.words.known("verbs", verb) else verb)
