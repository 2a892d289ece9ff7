"""The weigh-up: from the tables of the works, in the order of the plan, to text. The very figures of the prep sheets."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.cautions.registry import cautions_of
from manchet.day.pages.bowls import BowlOfDay, WeighingSitting, sittings
from manchet.day.pages.day_plan import DayPlan
from manchet.figures.water.stage_water import stage_waters
from manchet.sheets.forms.day_weighing.view import DayBowl, DaySitting, WeighUp
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import cautions_of_stage
from manchet.sheets.parts.clock_lines import clock_lines
from manchet.sheets.parts.day_clock import WallTime, changes_within
from manchet.sheets.parts.dough_ice import ice_in_the_dough


def weigh_up(plan: DayPlan, issue: Issue, house: House) -> WeighUp:
    """The view of the weigh-up."""
    words = words_of(house.words)
    m = Measures(house, words)
    found = sittings(plan, m.system)
    return WeighUp(
        title=plan.said.name,
        language=words["language"],
        paper=house.paper,
        units=house.units,
        running=running_head(plan.said.name, "", issue),
        sittings=tuple(_sitting(plan, one, m) for one in found),
        store=tuple(_store(found, m)),
        clock_changes=clock_lines(changes_within(plan, plan.day.begins, plan.day.finishes), m),
    )


def _sitting(plan: DayPlan, one: WeighingSitting, m: Measures) -> DaySitting:
    wall = WallTime(plan, m)
    who = plan.day.shifts[one.shift].name if one.shift >= 0 else ""
    title = m.words.say("weighup.sitting", wall.weekday(one.begins), wall.clock(one.begins), who)
    return DaySitting(title, tuple(_bowl(bowl, wall) for bowl in one.bowls))


def _bowl(one: BowlOfDay, wall: WallTime) -> DayBowl:
    m, work, stage = wall.m, one.work, one.table.making.stage
    is_dough = stage is work.dough
    bowl = Bowl(one.table, work, m, stage_waters(work), ice_in_the_dough(work, m) if is_dough else {})
    notes = []
    if one.table.making.times > 1:
        notes.append(m.words.say("weighup.mixes", str(one.table.making.times)))
    if one.shares:
        notes.append(m.words.say("weighup.tub_with", m.words["day.and"].join(one.shares)))
    return DayBowl(
        clocks=tuple(wall.clock(minute) for minute in one.wanted),
        bread=work.formula.name,
        stage=_stage_of(one, is_dough, m),
        note=", ".join(notes),
        rows=bowl.rows(held=False),
        later=bowl.later(),
        holds=_holds(bowl, m),
        cautions=cautions_of_stage(cautions_of(work), stage.stage.key, m),
    )


def _stage_of(one: BowlOfDay, is_dough: bool, m: Measures) -> str:
    """ "" of a preparation: its name is said, and it is no dough."""
    stage = one.table.making.stage.stage
    if is_dough:
        return "" if one.work.formula.preparation else m.words["kinds.dough"]
    return stage.name or stage.word


def _holds(bowl: Bowl, m: Measures) -> str:
    holds = bowl.holds()
    if holds is None:
        return ""
    letters = ", ".join(dict.fromkeys(sorted(bowl.letters.values())))
    if letters:
        return m.words.say("weighup.holds_before", bowl.vessel, str(holds), letters)
    return m.words.say("weighup.holds", bowl.vessel, str(holds))


def _store(found: Sequence[WeighingSitting], m: Measures) -> list[str]:
    """Each flour with the sum of what stands in its rows, the most first."""
    taken: dict[str, Fraction] = {}
    for sitting in found:
        for bowl in sitting.bowls:
            for line in bowl.table.lines:
                portion = line.weighed.portion
                if portion.ingredient is not None and portion.is_flour:
                    grams = line.shown * bowl.table.making.times
                    taken[portion.name] = taken.get(portion.name, Fraction(0)) + grams
    names = sorted(taken, key=lambda name: (-taken[name], name))
    return [m.words.say("weighup.store_line", name, m.mass(taken[name])) for name in names]
