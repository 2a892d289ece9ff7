"""The words under the day chart: why it waits, how sure it is, where least is to spare. All of it is read off the plan."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import groupby

from manchet.day.checking import check
from manchet.day.model import Goal
from manchet.day.pages.assumed import ages_taken
from manchet.day.pages.day_plan import DayPlan, title_of
from manchet.day.pages.spare import back_to_back, least_spare
from manchet.day.pages.waiting import LoadWaits, StandsOver, Why, loads_that_wait, waits_beyond
from manchet.formula.nouns import pieces_of
from manchet.quantities.printing import round_to
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_rows import waits_said
from manchet.sheets.parts.wording import single


def why_it_waits(plan: DayPlan, m: Measures) -> Iterator[str]:
    """Loads that wait for the same are one sentence."""
    waiting = sorted(loads_that_wait(plan), key=lambda one: one.minute)
    for _, alike in groupby(waiting, key=lambda one: (one.why, one.other, _heat(plan, one))):
        yield _load(plan, list(alike), m)
    for over in waits_beyond(plan):
        yield _over(plan, over, m)


def _heat(plan: DayPlan, one: LoadWaits) -> Fraction | None:
    enters = plan.day.loads[one.load].enters
    return enters.high if one.why is Why.FLOOR and enters is not None else None


def load_name(plan: DayPlan, load: int) -> str:
    """The bread, with its pieces where it has several loads: `30 buns of Regatta plait`, `20 Weir rolls`."""
    one = plan.day.loads[load]
    alike = [other for other in plan.day.loads if other.bread == one.bread]
    return one.bread if len(alike) == 1 else pieces_of(one.pieces, one.noun, one.bread)


def _load(plan: DayPlan, alike: list[LoadWaits], m: Measures) -> str:
    wall, one = WallTime(plan, m), alike[0]
    names = m.words["day.and"].join(load_name(plan, each.load) for each in alike)
    clock = wall.moment(one.minute)
    match one.why:
        case Why.FLOOR:
            heat = _heat(plan, one) or Fraction(0)
            return m.words.say("chart.floor", names, m.oven(single(round_to(heat, 0))), clock)
        case Why.HANDS if one.other < 0:
            return m.words.say("chart.nobody", names, clock)
        case Why.HANDS:
            return m.words.say("chart.hands", names, title_of(plan.day.jobs[one.other]), clock)
    return m.words.say("chart." + one.why.value, names, load_name(plan, one.other), clock)


def _over(plan: DayPlan, over: StandsOver, m: Measures) -> str:
    wall, wait = WallTime(plan, m), over.wait
    whose = _whose(plan, wait.before)
    said = (whose, waits_said(wait.what, m), str(over.minutes), str(wait.may))
    if over.nobody is None:
        return m.words.say("chart.over", *said)
    return m.words.say("chart.over_nobody", *said, wall.clock(over.nobody[0]), wall.clock(over.nobody[1]))


def _whose(plan: DayPlan, job: int) -> str:
    """`Tern loaf`, `Tern loaf poolish`; of a stage of the house its name alone."""
    moment, breads = plan.of.moments[job], title_of(plan.day.jobs[job])
    if moment is None or any(bread.work.dough.stage == moment.stage for bread in plan.of.breads):
        return breads
    return moment.stage.name if moment.making else f"{breads} {moment.stage.name}"


def how_sure(plan: DayPlan, m: Measures) -> Iterator[str]:
    """Goal by goal, in the order they count; the last of them, which only parts plans that are alike, is left out."""
    for goal in plan.planned.goals:
        if said := _goal(goal, len(plan.day.ends), WallTime(plan, m)):
            yield said


def _goal(goal: Goal, ends: int, wall: WallTime) -> str:
    words = wall.m.words
    per = max(ends, 1) if goal.name == "age" else 1  # an age is said as it is on average
    minutes, bound = wall.minutes(goal.value // per), wall.minutes(goal.bound // per)
    match goal.name:
        case "late":
            reached = words.say("chart.late", minutes) if goal.value else words["chart.not_late"]
        case "may wait":
            reached = words.say("chart.may_wait", minutes) if goal.value else words["chart.in_range"]
        case "room" | "presence" | "age":
            reached = words.say("chart." + goal.name, minutes)
        case _:
            return ""
    if goal.name != "room" and not goal.value:
        return reached
    if goal.proven:
        return words.say("chart.most" if goal.name == "room" else "chart.least", reached)
    if not goal.bound or goal.bound == goal.value:
        return words.say("chart.more" if goal.name == "room" else "chart.less", reached)
    return words.say("chart.at_best", reached, bound)


def ages_said(plan: DayPlan, m: Measures) -> str:
    """The oldest ages taken by kind: that of most breads by itself, others with whose they are; "" where files say them all."""
    ages = ages_taken(plan.of)
    said = [m.duration(age.seconds) for age in ages]
    others = [f"{m.words['day.and'].join(age.breads)} {text}" for age, text in zip(ages[1:], said[1:], strict=True)]
    return m.words.say("chart.oldest", "; ".join([*said[:1], *others])) if ages else ""


def is_checked(plan: DayPlan) -> bool:
    return not check(plan.day, plan.timetable)


def least_to_spare(plan: DayPlan, m: Measures) -> Iterator[str]:
    wall, say = WallTime(plan, m), m.words.say
    spare = least_spare(plan)
    if spare is not None:
        load = plan.day.loads[spare.load]
        clock, minutes = wall.moment(plan.begins(load.put)), wall.minutes(spare.minutes)
        if spare.by_floor and load.enters is not None:
            yield say("chart.spare_floor", load_name(plan, spare.load), clock, minutes, m.oven(single(load.enters.low)))
        else:
            said = (load_name(plan, spare.load), clock, minutes)
            what = waits_said(spare.what, m) if spare.what else ""
            yield say("chart.spare_wait", *said, what) if what else say("chart.spare_stands", *said)
    busy = back_to_back(plan)
    if busy is not None:
        name = plan.day.shifts[busy.shift].name
        yield say("chart.back_to_back", name, wall.moment(busy.begins), wall.clock(busy.ends), str(busy.jobs))
