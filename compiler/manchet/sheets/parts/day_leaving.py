"""Before you go, a line each: what is put back, what is laid, what stands, what the next one does first."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.weighing import weighings
from manchet.day.model import Fire
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.leaving import leaving
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import phrase_with
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_jobs import JobWords
from manchet.sheets.parts.day_rows import waits_said
from manchet.sheets.parts.steps import grams_moved


def before_you_go(plan: DayPlan, shift: int, m: Measures) -> tuple[str, ...]:
    """Of one shift; () after the last."""
    left, wall, words = leaving(plan, shift), WallTime(plan, m), JobWords(plan, works_of(plan), m)
    said = [*_put_back(plan, left.put_back, m)]
    for wait in left.stands:
        line = words.line(wait.before)
        whose = " ".join(filter(None, (line.bread, line.stage))) + _branch(plan, wait.before)
        until = wall.moment(plan.begins(wait.after))
        if wait.what == line.bread:
            said.append(m.words.say("go.for", whose, words.line(wait.after).bread, until))
        else:
            said.append(m.words.say("go.stands", whose, waits_said(wait.what, m), until))
    said += [fire_laid(plan, fire, m) for fire in left.fires]
    if left.next_shift >= 0:
        clock = wall.moment(plan.begins(left.next_job))
        said.append(m.words.say("go.next", plan.day.shifts[left.next_shift].name, clock, words.brief(left.next_job)))
    return tuple(dict.fromkeys(said))


def _branch(plan: DayPlan, job: int) -> str:
    """`, buns`: of a dough that is made into several things, which of them it is."""
    moment = plan.of.moments[job]
    several = moment is not None and len(works_of(plan)[moment.bread].formula.branches) > 1
    return f", {moment.branch}" if moment is not None and several and moment.branch else ""


def fire_laid(plan: DayPlan, fire: Fire, m: Measures) -> str:
    """`wood laid; light at Fri 16:30`"""
    falls = any(oven.name == fire.oven and oven.falls for oven in plan.said.kitchen.ovens)
    clock = WallTime(plan, m).moment(plan.begins(fire.light))
    return m.words.say("go.light" if falls else "go.switch_on", fire.oven or m.words["oven"], clock)


def _put_back(plan: DayPlan, parts: tuple[tuple[int, int], ...], m: Measures) -> Iterator[str]:
    works = works_of(plan)
    for job, at in parts:
        moment = plan.of.moments[job]
        step = None if moment is None else moment.parts[at].step
        if moment is None or step is None:
            continue
        work = works[moment.bread]
        table = next((one for one in weighings(work, m.system).value if step in one.making.stage.stage.steps), None)
        phrase = m.words.known("go_back", step.verb)
        for goes, grams in () if table is None or phrase is None else grams_moved(step, Bowl(table, work, m)):
            yield phrase_with(phrase or "", m.words["say.what_is_left"] if grams is None else m.mass(grams), goes.name)
