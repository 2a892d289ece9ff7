"""The oven card of a planned day: from loads, floors and minutes to text."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.cautions.registry import cautions_of
from manchet.day.floors import heat_of
from manchet.day.jobs.oven_times import AT_ONCE
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.oven_settings import DeckTurn, settings_of
from manchet.day.pages.oven_turns import OvenDay, OvenLoad, minutes_a_degree, ovens_of
from manchet.formula.nouns import number_beside
from manchet.quantities.printing import round_to
from manchet.sheets.drawings.falling import HeatWindow, LoadMark, way_down
from manchet.sheets.drawings.pen import drawing
from manchet.sheets.drawings.wall_clock import WallClock
from manchet.sheets.forms.day_oven.view import OvenAct, OvenLine, OvenOfDay, OvenRow, OvensPage
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts import wording
from manchet.sheets.parts.caution import caution_note
from manchet.sheets.parts.clock_lines import clock_lines
from manchet.sheets.parts.day_clock import WallTime, changes_within, minute_of
from manchet.sheets.parts.day_jobs import JobWords
from manchet.sheets.parts.views import CautionNote, Illustration
from manchet.sheets.parts.wording import single

AT_THE_DOOR = frozenset({"smoke-and-monoxide", "gas-oven", "oven-steam"})
"""What can hurt whoever stands at an oven: hazards of the house, by name."""


def ovens_page(plan: DayPlan, issue: Issue, house: House) -> OvensPage:
    """The view of the oven card: every oven of the plan that anything goes into."""
    words = words_of(house.words)
    m = Measures(house, words)
    return OvensPage(
        title=plan.said.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(plan.said.name, "", issue),
        degree=m.degree(),
        ovens=tuple(_oven(plan, one, m) for one in ovens_of(plan)),
        cautions=tuple(_cautions(plan, m)),
        clock_changes=clock_lines(changes_within(plan, plan.day.begins, plan.day.finishes), m),
    )


def _cautions(plan: DayPlan, m: Measures) -> Iterator[CautionNote]:
    """Those of the oven, each once, and those of the bakes themselves."""
    seen: set[str] = set()
    baked = {(turn.bread, turn.stage.key): turn for turn in plan.of.baked}
    for name, work in works_of(plan).items():
        for one in cautions_of(work):
            turn = baked.get((name, one.at.stage))
            steps = () if turn is None else turn.stage.steps
            at_bake = (
                one.at.step is not None and one.at.branch is None and one.at.step < len(steps) and turn is not None
            )
            if at_bake and turn is not None and one.at.step is not None and steps[one.at.step] not in turn.phases:
                at_bake = False
            if (one.name in AT_THE_DOOR or at_bake) and one.name not in seen:
                seen.add(one.name)
                yield caution_note(one, m)


def _oven(plan: DayPlan, one: OvenDay, m: Measures) -> OvenOfDay:
    wall, words = WallTime(plan, m), m.words
    number = str(len(one.loads))
    lit = m.words["day.and"].join(wall.moment(plan.begins(fire.light)) for fire in one.fires)
    falls = bool(one.oven.curve)
    return OvenOfDay(
        oven=one.oven.name or words["oven"],
        head=words.say("loads.head_fire" if falls else "loads.head_on", lit, number)
        if lit
        else words.say("loads.head", number),
        rule=(words["loads.read_first"], *((words["loads.estimate"],) if falls else ())),
        lines=_lines(plan, one, m),
        curve=_curve(plan, one, m) if falls and one.fires else None,
        hotter=_hotter(plan, one, m),
    )


def _fives(celsius: Fraction, m: Measures) -> str:
    """A floor's heat without its unit, to what its thermometer tells apart."""
    return m.plain(single(round_to(m.reading(celsius) / 5, 0) * 5), 0)


def _lines(plan: DayPlan, one: OvenDay, m: Measures) -> tuple[OvenLine, ...]:
    """What is done to the oven and what goes into it, by the clock; the date where it is another."""
    wall, last, lines = WallTime(plan, m), "", list[OvenLine]()
    acts = [(minute, OvenLine("", act, None)) for minute, act in _acts(plan, one, m)]
    loads = [(row.into, OvenLine("", None, _row(plan, one, row, m))) for row in one.loads]
    for minute, line in sorted([*acts, *loads], key=lambda each: each[0]):
        day = wall.day(minute)
        lines.append(line._replace(day=day if day != last else ""))
        last = day
    return tuple(lines)


def _acts(plan: DayPlan, one: OvenDay, m: Measures) -> Iterator[tuple[int, OvenAct]]:
    """With the minute of each."""
    wall, say = WallTime(plan, m), m.words.say
    if not one.oven.curve:
        yield from _settings(plan, one, m)
        return
    hottest = one.oven.curve[0].celsius
    for fire in one.fires:
        lit, out = plan.begins(fire.light), plan.begins(fire.light) + fire.heats
        does = say("loads.light", m.oven(single(round_to(hottest, 0))), wall.minutes(fire.heats))
        yield lit, OvenAct(wall.clock(lit), does, _who(plan, fire.light), "")
        yield out, OvenAct(wall.clock(out), m.words["loads.fire_out"], "", _fives(hottest, m))


def _settings(plan: DayPlan, one: OvenDay, m: Measures) -> Iterator[tuple[int, OvenAct]]:
    wall, words = WallTime(plan, m), JobWords(plan, works_of(plan), m)
    numbers = {row.load: row for row in one.loads}
    heats = wall.minutes(max((fire.heats for fire in one.fires), default=0))
    for setting in settings_of(plan):
        if setting.oven != one.oven.name:
            continue
        does, minute = words.setting(setting), plan.begins(setting.job)
        if setting.turn is DeckTurn.ON:
            does = m.words.say("loads.hot_after", does, heats)
        elif setting.turn is DeckTurn.TO:
            row = numbers[setting.load]
            does = m.words.say("loads.for_load", does, str(row.number), wall.moment(row.into))
        yield minute, OvenAct(wall.clock(minute), does, _who(plan, setting.job), "")


def _who(plan: DayPlan, job: int) -> str:
    shift = plan.timetable.shifts[job]
    return plan.day.shifts[shift].name if shift >= 0 else ""


# ---- a load


def _row(plan: DayPlan, one: OvenDay, row: OvenLoad, m: Measures) -> OvenRow:
    load, wall, say = plan.day.loads[row.load], WallTime(plan, m), m.words.say
    bounds = []
    if one.oven.curve and load.enters is not None:
        bounds.append(say("loads.not_under", _fives(load.enters.low, m)))
    if row.latest is not None and row.latest > row.into:
        bounds.append(say("loads.by", wall.clock(row.latest)))
    if row.floor is None and load.at_the_mouth:
        bounds = [m.words["loads.at_the_mouth"]]
    return OvenRow(
        number=str(row.number),
        clock=wall.clock(row.into),
        floor="" if row.floor is None else _fives(row.floor, m),
        bread=load.bread,
        pieces=number_beside(load.bread, load.pieces, load.noun) if load.pieces else "",
        deck=say("day.deck", str(plan.timetable.decks[row.load] + 1)) if one.oven.decks > 1 else "",
        beside=say("loads.beside", m.words["day.and"].join(map(str, row.beside))) if row.beside else "",
        bounds=" · ".join(bounds),
        then=tuple(_then(plan, one, row, m)),
        colder=_colder(plan, one, row, m),
        out=wall.clock(row.out),
    )


def _then(plan: DayPlan, one: OvenDay, row: OvenLoad, m: Measures) -> Iterator[str]:
    """Steam and damper as it goes in; what is done while it is in, by the clock; the phases of an oven that is set; the look and the core."""
    wall, phases = WallTime(plan, m), plan.of.baked[row.load].phases
    words = JobWords(plan, works_of(plan), m)
    if phases:
        at_once = [event for event in phases[0].events if event.after <= AT_ONCE]
        yield from wording.events(phases[0]._replace(events=tuple(at_once)), m)
    for job in row.inside:
        does = " · ".join(clause.do for clause in words.line(job).clauses)
        yield m.words.say("loads.at_clock", does, wall.clock(plan.begins(job)))
    if not one.oven.curve:
        is_set = any(words.sets_the_heat(job) for job in row.inside)  # what is set is said there, with its clock
        for phase in phases[1:]:
            around = () if is_set else wording.around(phase, m)
            said = " ".join(filter(None, (*wording.how_long(phase, m), *around)))
            if said:
                yield m.words.say("loads.then_phase", said)
    yield from filter(None, (wording.look(phase, m) for phase in phases))
    if core := _core(plan, row, m):
        yield core


def _core(plan: DayPlan, row: OvenLoad, m: Measures) -> str:
    """`to 97 °C core`, where the file says one."""
    reaches = (reach for phase in plan.of.baked[row.load].phases for reach in phase.reaches if reach.what == "core")
    return next((m.words.say("say.core", m.degrees(reach.value)) for reach in reaches), "")


def _colder(plan: DayPlan, one: OvenDay, row: OvenLoad, m: Measures) -> str:
    """What to do if the floor is under the coldest that the load may go in at."""
    enters, say = plan.day.loads[row.load].enters, m.words.say
    if not one.oven.curve or enters is None or row.floor is None:
        return ""
    under = _fives(enters.low, m)
    if row.first_if_colder:
        return say("loads.colder_first", under, str(row.first_if_colder))
    core = next(
        (reach.value for phase in plan.of.baked[row.load].phases for reach in phase.reaches if reach.what == "core"),
        None,
    )
    if core is not None:
        return say("loads.colder_core", under, say("say.core", m.degrees(core)).removeprefix(say("say.to", "")))
    return say("loads.colder_longer", under)


# ---- the floor


def _hotter(plan: DayPlan, one: OvenDay, m: Measures) -> str:
    """How long a degree takes, at the first load and, where that is another time by then, at the last."""
    loads = [plan.day.loads[row.load] for row in one.loads]
    slow = [(load, minutes_a_degree(plan, one.oven, load)) for load in loads]
    known = [(load, minutes) for load, minutes in slow if minutes is not None]
    if not known:
        return ""
    part = Fraction(5, 9) if m.house.degrees == "F" else Fraction(1)
    said = [(load, m.time(single(max(round_to(minutes * part, 0), Fraction(1)) * 60))) for load, minutes in known]
    (_, first), (last, then) = said[0], said[-1]
    late = (
        "" if then == first else m.words.say("loads.hotter_late", WallTime(plan, m).clock(plan.begins(last.put)), then)
    )
    return m.words.say("loads.hotter", m.degree(), first, late)


def _curve(plan: DayPlan, one: OvenDay, m: Measures) -> Illustration:
    """From the first fire out to the last load."""
    wall, out = WallTime(plan, m), plan.begins(one.fires[0].light) + one.fires[0].heats
    last = max(row.out for row in one.loads)
    corners = [point for point in one.oven.curve if out + point.minute < last]
    points = [(float(point.minute) / 60, float(m.reading(point.celsius))) for point in corners]
    points.append(((last - out) / 60, float(m.reading(heat_of(one.oven.curve, Fraction(last - out))))))
    marks, windows, told = [], [], []
    for row in one.loads:
        enters = plan.day.loads[row.load].enters
        if row.floor is None or enters is None or row.into < out:
            continue
        hours = (row.into - out) / 60
        marks.append(LoadMark(hours, float(m.reading(row.floor)), str(row.number)))
        windows.append(
            HeatWindow(hours, (row.out - out) / 60, float(m.reading(enters.low)), float(m.reading(enters.high)))
        )
        floor = f"{_fives(row.floor, m)}{NBSP}{m.degree()}"
        told.append(m.words.say("loads.point", str(row.number), wall.clock(row.into), floor))
    at = plan.of.clock.at(out)
    jumps = tuple((minute_of(plan, change) - out, change.minutes) for change in changes_within(plan, out, last))
    art = way_down(points, marks, m.degree(), WallClock(at.hour * 60 + at.minute, jumps), windows)
    made = drawing("falling oven", m.words.say("loads.curve", one.oven.name, "; ".join(told)), art)
    return Illustration(made.title, made.svg, high=made.high)
